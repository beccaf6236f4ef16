package ruleset

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"sort"
	"strings"

	"github.com/open-policy-agent/opa/v1/bundle"

	"sunclause/schema"
)

// maxArchive is how many bytes an archive may have when unpacked.
const maxArchive = 4 << 20

// LoadOption says how a rule set is to be loaded.
type LoadOption func(*loadOptions)

type loadOptions struct {
	key   []byte
	files []setFile // of the set itself, in place of those in its folder
}

// WithKey names the public key, in PEM, that a sealed archive must have been
// sealed with. A set with nothing sealed in it is then refused.
func WithKey(publicKeyPEM []byte) LoadOption {
	return func(o *loadOptions) { o.key = publicKeyPEM }
}

// openArchive reads a sealed rule set. Nothing of it is parsed before its
// signature is known to be right.
func openArchive(ref string, key []byte) (*layer, error) {
	shown := filepath.ToSlash(ref)
	files, err := verified(ref, key)
	if err != nil {
		return nil, fmt.Errorf("rule set %s: %w", shown, err)
	}
	l, err := newLayer(files, shown, false)
	if err != nil {
		return nil, err
	}
	l.sealed = true
	return l, nil
}

// verified reads the files of an archive and holds them against its signature.
func verified(ref string, key []byte) ([]setFile, error) {
	f, err := os.Open(ref)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	files, signature, err := unpack(f)
	if err != nil {
		return nil, err
	}
	if signature == nil {
		return nil, fmt.Errorf("this archive is not sealed: there is no %s in it; sunclause ruleset seal makes sealed ones", signatureName)
	}
	if key == nil {
		return nil, errors.New("this archive is sealed; name the public key with --key")
	}
	signed, err := signedFiles(signature, key)
	if err != nil {
		return nil, err
	}
	return files, compare(files, signed)
}

var (
	errNoArchive = errors.New("it is neither a folder nor an archive (.tar.gz)")
	errTooLarge  = fmt.Errorf("the archive is too large; at most %d bytes are unpacked", maxArchive)
)

// unpack reads an archive into memory: its files in order, and its signature.
func unpack(r io.Reader) (files []setFile, signature []byte, err error) {
	zip, err := gzip.NewReader(r)
	if err != nil {
		return nil, nil, errNoArchive
	}
	plain, err := io.ReadAll(io.LimitReader(zip, maxArchive+1))
	if err != nil {
		return nil, nil, errors.New("the archive is damaged: it ends early or its check sum is wrong")
	}
	if len(plain) > maxArchive {
		return nil, nil, errTooLarge
	}
	archive := tar.NewReader(bytes.NewReader(plain))
	total := int64(0)
	for seen := map[string]bool{}; ; {
		header, err := archive.Next()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, nil, errNoArchive
		}
		if err := admit(header, seen); err != nil {
			return nil, nil, err
		}
		if total += header.Size; total > maxArchive {
			return nil, nil, errTooLarge
		}
		raw, err := io.ReadAll(archive)
		if err != nil {
			return nil, nil, errNoArchive
		}
		if header.Name == signatureName {
			signature = raw
		} else {
			files = append(files, setFile{header.Name, raw})
		}
	}
	sort.Slice(files, func(i, j int) bool { return files[i].name < files[j].name })
	return files, signature, nil
}

// admit refuses what has no place in an archive of a rule set. A size is looked
// at before anything is read: a sparse file can say more than the archive has.
func admit(h *tar.Header, seen map[string]bool) error {
	folder := path.Dir(h.Name)
	switch {
	case !fs.ValidPath(h.Name):
		return fmt.Errorf("the archive has a file called %q; a name must lead neither out of the archive nor be absolute", h.Name)
	case h.Typeflag != tar.TypeReg:
		return fmt.Errorf("%s in the archive is not a plain file", h.Name)
	case h.Name != signatureName && (!belongs(h.Name) || folder != "." && folder != "tables"):
		return fmt.Errorf("the archive has a file %s, which is no part of a rule set", h.Name)
	case seen[h.Name]:
		return fmt.Errorf("the archive has two files called %s", h.Name)
	case h.Size > maxFileBytes:
		return fmt.Errorf("%s has %d bytes; at most %d are read", h.Name, h.Size, maxFileBytes)
	case len(seen) > maxFiles: // one more than a folder has: the signature
		return fmt.Errorf("the archive has more than %d files", maxFiles)
	}
	seen[h.Name] = true
	return nil
}

// signedFiles verifies a signature and lists the files it covers.
func signedFiles(signature, key []byte) (map[string]bundle.FileInfo, error) {
	pub, err := publicKey(key)
	if err != nil {
		return nil, err
	}
	var s bundle.SignaturesConfig
	if err := json.Unmarshal(signature, &s); err != nil || len(s.Signatures) != 1 {
		return nil, fmt.Errorf("%s in the archive does not hold one signature; the archive is damaged or was not made by sunclause ruleset seal", signatureName)
	}
	if got := algorithmOf(s.Signatures[0]); got != sealAlgorithm {
		return nil, fmt.Errorf("the archive is signed with the algorithm %q; only %s is accepted", got, sealAlgorithm)
	}
	// The verifier goes by this algorithm, never by what the signature says of
	// itself.
	keys := map[string]*bundle.KeyConfig{sealKey: {Key: pub, Algorithm: sealAlgorithm}}
	files, err := (&bundle.DefaultVerifier{}).VerifyBundleSignature(s, bundle.NewVerificationConfig(keys, sealKey, "", nil))
	if err != nil {
		return nil, errors.New("the signature does not fit the key: the archive was sealed with another key, or its signature was altered; do not use it before whoever sealed it has confirmed the key")
	}
	return files, nil
}

// algorithmOf reads what a JSON Web Token says it is signed with.
func algorithmOf(token string) string {
	head, _, _ := strings.Cut(token, ".")
	raw, err := base64.RawURLEncoding.DecodeString(head)
	var header struct {
		Algorithm string `json:"alg"`
	}
	if err != nil || json.Unmarshal(raw, &header) != nil {
		return "none"
	}
	return header.Algorithm
}

// compare holds the files of an archive against those that were signed.
func compare(files []setFile, signed map[string]bundle.FileInfo) error {
	var wrong []string
	for _, f := range files {
		s, ok := signed[f.name]
		switch {
		case !ok:
			wrong = append(wrong, f.name+" was added")
		case s.Algorithm != bundle.SHA256.String():
			return fmt.Errorf("the archive lists %s with a hash of the kind %q; only %s is accepted", f.name, s.Algorithm, bundle.SHA256)
		case s.Hash != Hash(f.raw):
			wrong = append(wrong, f.name+" was altered")
		}
		delete(signed, f.name)
	}
	for name := range signed {
		wrong = append(wrong, name+" was removed")
	}
	if len(wrong) == 0 {
		return nil
	}
	slices.Sort(wrong)
	return fmt.Errorf("after sealing, %s; do not use this archive, ask whoever sealed it for another", strings.Join(wrong, ", "))
}

// checkSealable refuses a set that cannot travel alone.
func (l *layer) checkSealable() error {
	if next := l.manifest.Extends.Value; strings.ContainsAny(next, `/\.`) {
		return l.notAlone()
	}
	return nil
}

func (l *layer) notAlone() error {
	return schema.Problems{l.source.ProblemAt("/extends", fmt.Sprintf("a sealed set cannot build on %q", l.manifest.Extends.Value),
		"let it build on an embedded set; what it takes from others, copy into it")}
}
