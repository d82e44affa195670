package content

import (
	"encoding/binary"
	"errors"
	"time"
)

// mp4 gives how long an M4A file plays, as its movie header says. ISO/IEC
// 14496-12: a file is a row of boxes, each with its size and four letters.
func (t *tape) mp4() (time.Duration, error) {
	m := movie{}
	if err := t.boxes(0, t.size, deepestBox, &m); err != nil {
		return 0, err
	}
	switch {
	case !m.header:
		return 0, errors.New("is cut short: the list of its contents is missing")
	case !m.sound:
		return 0, errors.New("holds no sound")
	case m.scale == 0 || m.duration == 0:
		return 0, errors.New("is written in fragments, as for streaming; save it as an ordinary M4A file")
	}
	return playing(float64(m.duration) / float64(m.scale)), nil
}

// A movie is what is read of an M4A file.
type movie struct {
	header, sound   bool
	scale, duration uint64 // units a second, and how many of them it plays
}

// deepestBox is how deep the boxes that are looked into stand in one another:
// moov, trak, mdia.
const deepestBox = 3

// boxes reads the boxes from one place to another, and what is within those
// that lead to the two that matter, as far down as those can stand.
func (t *tape) boxes(at, end int64, deep int, m *movie) error {
	for at+8 <= end {
		b := t.peekAt(at, 16)
		if len(b) < 8 {
			return errSoundCut
		}
		size, head, name := int64(binary.BigEndian.Uint32(b)), int64(8), string(b[4:8])
		switch {
		case size == 0: // to the end
			size = end - at
		case size == 1 && len(b) == 16:
			size, head = int64(binary.BigEndian.Uint64(b[8:])), 16
		}
		if size < head {
			return errNoRecording
		}
		if size > end-at {
			return errSoundCut
		}
		switch name {
		case "moov", "trak", "mdia":
			if deep == 0 {
				return errNoRecording
			}
			if err := t.boxes(at+head, at+size, deep-1, m); err != nil {
				return err
			}
		case "mvhd":
			m.readHeader(t.peekAt(at+head, 32))
		case "hdlr":
			b := t.peekAt(at+head, 12)
			m.sound = m.sound || len(b) == 12 && string(b[8:12]) == "soun"
		}
		at += size
	}
	return nil
}

func (m *movie) readHeader(b []byte) {
	switch {
	case len(b) < 32:
	case b[0] == 0:
		m.header, m.scale, m.duration = true, uint64(binary.BigEndian.Uint32(b[12:])), uint64(binary.BigEndian.Uint32(b[16:]))
	default: // version 1, whose times have 64 bits
		m.header, m.scale, m.duration = true, uint64(binary.BigEndian.Uint32(b[20:])), binary.BigEndian.Uint64(b[24:])
	}
}
