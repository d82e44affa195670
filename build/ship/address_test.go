package ship

import (
	"strings"
	"testing"
)

func TestParseAddress(t *testing.T) {
	const secret = "canary5ecret"
	tests := []struct{ address, shown, fault string }{
		{"sftp://ada@larder.example/srv/www", "sftp://ada@larder.example/srv/www", ""},
		{"sftp://larder.example:2222/srv/www/", "sftp://larder.example:2222/srv/www", ""},
		{"sftp://[::1]:2222/srv", "sftp://[::1]:2222/srv", ""},
		{"sftp://ada@larder.example/~/www", "sftp://ada@larder.example/~/www", ""},
		{"sftp://larder.example/srv/../etc", "sftp://larder.example/etc", ""},
		{"s3://larder", "s3://larder", ""},
		{"s3://larder/www/2026/", "s3://larder/www/2026", ""},
		{"s3://larder/../other", "s3://larder/other", ""},
		{"sftp://larder.example", "", "says no folder"},
		{"sftp://ada:" + secret + "@larder.example/srv", "", "holds a password"},
		{"s3://jam:" + secret + "@larder/www", "", "holds a password"},
		{"s3://" + secret + "@larder/www", "", "holds a password"},
		{"sftp://ada:" + secret + "%zz@larder.example/srv", "", "is not an address"},
		{"sftp://larder.example:port/srv", "", "is not an address"},
		{"sftp:///srv", "", "is not an address"},
		{"s3://larder:9000/www", "", "a bucket has no port"},
		{"s3://larder/www?x=1", "", "is not an address"},
		{"ftp://larder.example/srv", "", "and nowhere else"},
		{"https://larder.example/", "", "and nowhere else"},
	}
	for _, tt := range tests {
		got, err := ParseAddress(tt.address)
		switch {
		case tt.fault == "" && (err != nil || got.String() != tt.shown):
			t.Errorf("ParseAddress(%q) = %q, %v, want %q", tt.address, got, err, tt.shown)
		case tt.fault != "" && (err == nil || !strings.Contains(err.Error(), tt.fault)):
			t.Errorf("ParseAddress(%q): %v, want an error with %q", tt.address, err, tt.fault)
		case err != nil && strings.Contains(err.Error(), secret):
			t.Errorf("ParseAddress(%q) tells the secret: %v", tt.address, err)
		}
	}
}
