package build

import "testing"

func TestTextOf(t *testing.T) {
	for _, c := range []struct{ markup, want string }{
		{"<p>Salt &amp; time.</p>\n<p>See <a href=\"https://larder.example/a?b=1&amp;c\">the page</a>.</p>", "Salt & time.\n\nSee the page (https://larder.example/a?b=1&c)."},
		{"<p>At <a href=\"https://larder.example/\">https://larder.example/</a></p>", "At https://larder.example/"},
		{"<p>One\ntwo <em>three</em>, <strong>four</strong>\nfive.</p>", "One two three, four five."},
		{"<p>Three:</p>\n<ul>\n<li>salt</li>\n<li>\n<p>time</p>\n</li>\n</ul>\n<p>After.</p>", "Three:\n\n- salt\n- time\n\nAfter."},
		{"<ol>\n<li>Weigh\n<ul>\n<li>salt</li>\n</ul>\n</li>\n<li>Wait</li>\n</ol>", "1. Weigh\n  - salt\n2. Wait"},
		{"<table><thead><tr><th>Jar</th><th>Time</th></tr></thead><tbody><tr><td>pint</td><td>10 min</td></tr></tbody></table>", "Jar | Time\npint | 10 min"},
		{"<p>One<br>two</p>", "One\ntwo"},
		{"<blockquote>\n<p>Said.</p>\n</blockquote>\n<hr>\n<pre><code>a  b\n</code></pre>", "Said.\n\na b"},
		{"", ""},
	} {
		if got := textOf(c.markup); got != c.want {
			t.Errorf("textOf(%q)\n= %q\nwant %q", c.markup, got, c.want)
		}
	}
}
