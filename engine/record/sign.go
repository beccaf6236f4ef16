package record

import (
	"crypto/ed25519"
	"crypto/x509"
	"errors"

	"sunclause/engine/ruleset"
)

// Sign signs the bytes of a record with an Ed25519 key in PEM. The
// signature is 64 bytes that stand beside the record, as openssl pkeyutl
// -rawin makes and verifies them; the same record and key give the same.
func Sign(raw, privateKeyPEM []byte) ([]byte, error) {
	const remedy = "an Ed25519 key is needed, as openssl genpkey -algorithm ed25519 makes"
	block := ruleset.PEMBlock(privateKeyPEM, "PRIVATE KEY")
	if block == nil {
		return nil, errors.New("the key to sign with is no private key in PEM; " + remedy)
	}
	key, err := x509.ParsePKCS8PrivateKey(block.Bytes)
	if err != nil {
		return nil, errors.New("the private key cannot be read; it must not have a passphrase; " + remedy)
	}
	private, ok := key.(ed25519.PrivateKey)
	if !ok {
		return nil, errors.New("the private key is of another kind; " + remedy)
	}
	return ed25519.Sign(private, raw), nil
}

// Verify holds the bytes of a record against their signature.
func Verify(raw, signature, publicKeyPEM []byte) error {
	const remedy = "name the public half of the key it was signed with, as openssl pkey -pubout writes it"
	if ruleset.PEMBlock(publicKeyPEM, "PRIVATE KEY") != nil {
		return errors.New("the key is a private one, which should not leave whoever signs; " + remedy)
	}
	block := ruleset.PEMBlock(publicKeyPEM, "PUBLIC KEY")
	if block == nil {
		return errors.New("the key is no public key in PEM; " + remedy)
	}
	key, err := x509.ParsePKIXPublicKey(block.Bytes)
	if err != nil {
		return errors.New("the public key cannot be read; " + remedy)
	}
	public, ok := key.(ed25519.PublicKey)
	if !ok {
		return errors.New("the public key is not an Ed25519 key; " + remedy)
	}
	if !ed25519.Verify(public, raw, signature) {
		return errors.New("the signature does not fit: the record was altered, or signed with another key; do not rely on it before whoever made it has confirmed both")
	}
	return nil
}
