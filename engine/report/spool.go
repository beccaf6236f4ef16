package report

import (
	"bufio"
	"fmt"
	"io"
	"os"
)

// spool keeps what has to stand below something that is only known at the end,
// in a file without a name: a batch may have any number of documents. The zero
// spool is ready for use.
type spool struct {
	file *os.File // nil before the first text
	to   *bufio.Writer
}

func (s *spool) Write(text []byte) (int, error) {
	if s.file == nil {
		f, err := os.CreateTemp("", "sunclause-*")
		if err != nil {
			return 0, fmt.Errorf("cannot keep the reports until the end: %w", err)
		}
		// Without a name nothing is left behind, however the program ends. A system
		// that does not allow it has the file until close.
		_ = os.Remove(f.Name())
		s.file, s.to = f, bufio.NewWriterSize(f, piece)
	}
	n, err := s.to.Write(text)
	if err != nil {
		err = fmt.Errorf("cannot keep the reports until the end: %w", err)
	}
	return n, err
}

// copyTo hands on all that was written.
func (s *spool) copyTo(w io.Writer) error {
	if s.file == nil {
		return nil
	}
	if err := s.to.Flush(); err != nil {
		return fmt.Errorf("cannot keep the reports until the end: %w", err)
	}
	if _, err := s.file.Seek(0, io.SeekStart); err != nil {
		return fmt.Errorf("cannot read the reports again: %w", err)
	}
	_, err := io.Copy(w, s.file)
	return err
}

// close lets go of the file.
func (s *spool) close() {
	if s.file != nil {
		s.file.Close()
		_ = os.Remove(s.file.Name()) // where it has still its name
	}
}
