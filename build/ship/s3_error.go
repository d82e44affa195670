package ship

import (
	"crypto/tls"
	"crypto/x509"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"net/http"
	"net/url"
	"syscall"

	"github.com/minio/minio-go/v7"
)

// explain says what an answer of a store means. Nothing of the request is
// repeated: it is signed.
func (p *s3Place) explain(err error) error {
	var answer minio.ErrorResponse
	var name *net.DNSError
	var op net.Error
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return err
	case errors.As(err, &answer):
		return p.explainAnswer(answer)
	case errors.As(err, &name):
		return fmt.Errorf("there is no host %s: is it spelt right, and is this machine online?", name.Name)
	case errors.Is(err, syscall.ECONNREFUSED):
		return fmt.Errorf("nothing answers at %s: is AWS_ENDPOINT_URL_S3 right?", p.login.host)
	case isCertificate(err):
		return fmt.Errorf("%s shows no good certificate (%w); if it is your own, have AWS_CA_BUNDLE name the file of who signed it", p.login.host, certificateFault(err))
	case errors.As(err, &op) && op.Timeout():
		return fmt.Errorf("%s did not answer in time", p.login.host)
	case p.passing(err):
		return fmt.Errorf("the connection to %s broke off", p.login.host)
	}
	return err
}

func (p *s3Place) explainAnswer(a minio.ErrorResponse) error {
	switch a.Code {
	case "NoSuchBucket":
		return fmt.Errorf("there is no bucket %s at %s; make it, or mend the address", p.bucket, p.login.host)
	case "InvalidAccessKeyId", "SignatureDoesNotMatch", "ExpiredToken", "InvalidToken", "AuthFailure":
		return fmt.Errorf("%s does not accept the keys (%s), which are from %s", p.login.host, a.Code, p.login.from)
	case "AccessDenied":
		return fmt.Errorf("the keys from %s may not do that in the bucket %s: they need to list it, and to get, put and delete in it", p.login.from, p.bucket)
	case "AuthorizationHeaderMalformed", "PermanentRedirect", "IllegalLocationConstraintException":
		return fmt.Errorf("the bucket %s is in another region than %s; say which by AWS_REGION", p.bucket, p.login.region)
	case "RequestTimeTooSkewed":
		return errors.New("the clock of this machine is wrong, and the store goes by it; set it")
	}
	if a.StatusCode == http.StatusInsufficientStorage { // RFC 4918, 11.5
		return fmt.Errorf("%s has no room left for more files", p.login.host)
	}
	return fmt.Errorf("%s answers %d %s", p.login.host, a.StatusCode, a.Code)
}

// certificateFault leaves out the request that met it.
func certificateFault(err error) error {
	var request *url.Error
	if errors.As(err, &request) {
		return request.Err
	}
	return err
}

func isCertificate(err error) bool {
	var verify *tls.CertificateVerificationError
	var authority x509.UnknownAuthorityError
	var record tls.RecordHeaderError
	return errors.As(err, &verify) || errors.As(err, &authority) || errors.As(err, &record)
}
