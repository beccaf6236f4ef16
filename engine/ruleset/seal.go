package ruleset

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/sha256"
	"crypto/x509"
	"encoding/hex"
	"encoding/json"
	"encoding/pem"
	"errors"
	"fmt"
	"io"
	"io/fs"

	"github.com/open-policy-agent/opa/v1/bundle"
)

// signatureName is the file of an archive that holds its signature. No file of
// a rule set can have the name: it begins with a dot.
const signatureName = ".signatures.json"

const (
	sealAlgorithm = "ES256"   // ECDSA on the curve P-256 with SHA-256
	sealKey       = "ruleset" // what the key is called inside the signature
)

// Seal writes the rule set in a folder as a signed .tar.gz.
//
// The archive holds every file that judges, as it stands: the manifest, limit
// rows and Rego rules, and the tables; not the tests. After them comes
// .signatures.json as OPA bundles have it: one JSON Web Token, signed with
// ES256, whose claim "files" lists every other file of the archive with the
// SHA-256 of its bytes. The token covers the names and the bytes of the files
// and that there are no others; YAML is hashed as bytes, comments and all.
// It does not cover the sets that this one builds on, which are those embedded
// in the sunclause that opens the archive, nor when or by whom it was sealed.
//
// The key is a private EC key on the curve P-256, in PEM. Two seals of one
// folder differ in the signature only, which ES256 makes with a random number.
func Seal(w io.Writer, fsys fs.FS, shown string, privateKeyPEM []byte) error {
	files, err := readFiles(fsys, shown)
	if err != nil {
		return err
	}
	l, err := newLayer(files, shown, false)
	if err != nil {
		return err
	}
	if err := l.checkSealable(); err != nil {
		return err
	}
	key, err := privateKey(privateKeyPEM)
	if err != nil {
		return err
	}
	signature, err := sign(files, key)
	if err != nil {
		return fmt.Errorf("rule set %s: %w", shown, err)
	}
	packed, err := pack(append(files, setFile{signatureName, signature}))
	if err != nil {
		return fmt.Errorf("rule set %s: %w", shown, err)
	}
	_, err = w.Write(packed)
	return err
}

// sign makes the .signatures.json of the files.
func sign(files []setFile, key string) ([]byte, error) {
	infos := make([]bundle.FileInfo, len(files))
	for i, f := range files {
		infos[i] = bundle.NewFile(f.name, Hash(f.raw), bundle.SHA256.String())
	}
	token, err := bundle.GenerateSignedToken(infos, bundle.NewSigningConfig(key, sealAlgorithm, ""), sealKey)
	if err != nil {
		return nil, err
	}
	return json.MarshalIndent(bundle.SignaturesConfig{Signatures: []string{token}}, "", "  ")
}

// Hash is the SHA-256 of a text, in hexadecimal.
func Hash(raw []byte) string {
	sum := sha256.Sum256(raw)
	return hex.EncodeToString(sum[:])
}

// pack writes files as .tar.gz: the same files, the same bytes.
func pack(files []setFile) ([]byte, error) {
	var plain, packed bytes.Buffer
	archive := tar.NewWriter(&plain)
	for _, f := range files {
		header := &tar.Header{Name: f.name, Typeflag: tar.TypeReg, Mode: 0o644, Size: int64(len(f.raw))}
		if err := archive.WriteHeader(header); err != nil {
			return nil, err
		}
		if _, err := archive.Write(f.raw); err != nil {
			return nil, err
		}
	}
	if err := archive.Close(); err != nil {
		return nil, err
	}
	if plain.Len() > maxArchive {
		return nil, fmt.Errorf("unpacked, the archive would have %d bytes; at most %d are read", plain.Len(), maxArchive)
	}
	zip := gzip.NewWriter(&packed)
	if _, err := zip.Write(plain.Bytes()); err != nil {
		return nil, err
	}
	if err := zip.Close(); err != nil {
		return nil, err
	}
	return packed.Bytes(), nil
}

// privateKey reads a private key from PEM and writes it as OPA's signer takes
// it.
func privateKey(text []byte) (string, error) {
	const remedy = "an EC key on the curve P-256 is needed, as openssl ecparam -name prime256v1 -genkey -noout makes"
	block := PEMBlock(text, "EC PRIVATE KEY", "PRIVATE KEY")
	if block == nil {
		return "", errors.New("the key to seal with is no private key in PEM; " + remedy)
	}
	var key any
	var err error
	if block.Type == "EC PRIVATE KEY" {
		key, err = x509.ParseECPrivateKey(block.Bytes)
	} else {
		key, err = x509.ParsePKCS8PrivateKey(block.Bytes)
	}
	if err != nil {
		return "", errors.New("the private key cannot be read; it must not have a passphrase; " + remedy)
	}
	ec, ok := key.(*ecdsa.PrivateKey)
	if !ok || ec.Curve != elliptic.P256() {
		return "", errors.New("the private key is of another kind; " + remedy)
	}
	der, err := x509.MarshalPKCS8PrivateKey(ec)
	return string(pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: der})), err
}

// publicKey reads a public key from PEM and writes it as OPA's verifier takes
// it.
func publicKey(text []byte) (string, error) {
	const remedy = "name the public half of the key it was sealed with, as openssl ec -pubout writes it"
	if PEMBlock(text, "EC PRIVATE KEY", "PRIVATE KEY") != nil {
		return "", errors.New("the key is a private one, which is for sealing and should not leave whoever seals; " + remedy)
	}
	block := PEMBlock(text, "PUBLIC KEY")
	if block == nil {
		return "", errors.New("the key is no public key in PEM; " + remedy)
	}
	key, err := x509.ParsePKIXPublicKey(block.Bytes)
	if err != nil {
		return "", errors.New("the public key cannot be read; " + remedy)
	}
	if ec, ok := key.(*ecdsa.PublicKey); !ok || ec.Curve != elliptic.P256() {
		return "", errors.New("the public key is not an EC key on the curve P-256; " + remedy)
	}
	return string(pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: block.Bytes})), nil
}

// PEMBlock finds the first PEM block of one of the kinds; openssl may write
// the parameters of the curve before the key.
func PEMBlock(text []byte, kinds ...string) *pem.Block {
	for {
		block, rest := pem.Decode(text)
		if block == nil {
			return nil
		}
		for _, k := range kinds {
			if block.Type == k {
				return block
			}
		}
		text = rest
	}
}
