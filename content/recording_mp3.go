package content

import (
	"bytes"
	"encoding/binary"
	"time"
)

// mp3 gives how long an MP3 file plays. Its first frame may hold the number of
// frames, as encoders write it; else every frame is counted, for the frames of
// a file may differ in length. ISO/IEC 11172-3 and 13818-3.
func (t *tape) mp3() (time.Duration, error) {
	at := t.afterTags(0)
	first, ok := t.frame(at)
	if !ok || !t.follows(at+int64(first.length)) {
		if at, ok = t.resync(at); !ok {
			return 0, errNoRecording
		}
		first, _ = t.frame(at)
	}
	if frames, bytes, skipped := t.counted(at, first); frames > 0 {
		if bytes > 0 && at+bytes > t.size+longestFrame {
			return 0, errSoundCut
		}
		return first.lasts(frames*int64(first.samples) - skipped), nil
	}
	return t.countFrames(at)
}

// A frame is a stretch of sound, by its header of four bytes.
type frame struct {
	length  int // in bytes
	samples int
	rate    int // samples a second
	begin   int // where the sound begins, after the header and side information
}

func (f frame) lasts(samples int64) time.Duration {
	return playing(float64(max(samples, 0)) / float64(f.rate))
}

// longestFrame is the most bytes that a frame has: 320 kbit/s at 32 kHz.
const longestFrame = 1441

// The bit rates of layer III in kbit/s, and the samples a second of MPEG 1;
// those of MPEG 2 are half of them, those of MPEG 2.5 a quarter. ISO/IEC
// 11172-3 and 13818-3, 2.4.2.3.
var (
	bitRates1 = [16]int{0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320}
	bitRates2 = [16]int{0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160}
	rates     = [4]int{44100, 48000, 32000}
)

// frame reads the header of a frame of layer III.
func (t *tape) frame(at int64) (frame, bool) {
	b := t.peekAt(at, 4)
	if len(b) < 4 || b[0] != 0xff || b[1]&0xe6 != 0xe2 { // eleven bits set, layer III
		return frame{}, false
	}
	version, rate := b[1]>>3&3, rates[b[2]>>2&3] // 3 MPEG 1, 2 MPEG 2, 0 MPEG 2.5
	bits, f := bitRates1[b[2]>>4], frame{samples: 1152, rate: rate, begin: 4 + 32}
	mono := b[3]>>6 == 3
	switch {
	case version == 3 && mono:
		f.begin = 4 + 17
	case version == 3:
	case mono:
		f.begin = 4 + 9
	default:
		f.begin = 4 + 17
	}
	if version != 3 {
		bits, f.samples, f.rate = bitRates2[b[2]>>4], 576, rate/2
	}
	if version == 0 {
		f.rate = rate / 4
	}
	if version == 1 || bits == 0 || rate == 0 {
		return frame{}, false
	}
	f.length = f.samples/8*bits*1000/f.rate + int(b[2]>>1&1)
	return f, true
}

// follows reports whether a frame, a tag or the end of the file is at a place.
func (t *tape) follows(at int64) bool {
	_, ok := t.frame(at)
	return ok || at >= t.size || t.afterTags(at) > at
}

// afterTags passes over the tags that stand at a place: ID3 of either version,
// and APE, which stand before the sound, after it, or between joined files.
func (t *tape) afterTags(at int64) int64 {
	for {
		b := t.peekAt(at, 32)
		switch {
		case len(b) >= 10 && string(b[:3]) == "ID3":
			at += 10 + int64(b[6]&0x7f)<<21 + int64(b[7]&0x7f)<<14 + int64(b[8]&0x7f)<<7 + int64(b[9]&0x7f)
			if b[5]&0x10 != 0 { // a footer as long as the header
				at += 10
			}
		case bytes.HasPrefix(b, []byte("TAG")) && t.size-at == 128:
			return t.size
		case len(b) == 32 && string(b[:8]) == "APETAGEX":
			at += 32 + int64(binary.LittleEndian.Uint32(b[12:16]))
		default:
			return at
		}
	}
}

// counted reads what an encoder wrote into the first frame: the number of
// frames that follow, the bytes of all, and how many samples at the beginning
// and end are none of the recording. frames is 0 if it wrote nothing.
func (t *tape) counted(at int64, first frame) (frames, size, skipped int64) {
	b := t.peekAt(at, first.begin+8+8+100+4+24)
	if len(b) < first.begin+16 {
		return 0, 0, 0
	}
	b = b[first.begin:]
	if tag := string(b[:4]); tag != "Xing" && tag != "Info" {
		return 0, 0, 0
	}
	flags, b := binary.BigEndian.Uint32(b[4:]), b[8:]
	take := func(flag uint32, n int) (v int64) {
		if flags&flag == 0 || len(b) < n {
			return 0
		}
		v = int64(binary.BigEndian.Uint32(b))
		b = b[n:]
		return v
	}
	frames, size = take(1, 4), take(2, 4)
	take(4, 100)
	take(8, 4)
	if len(b) >= 24 && b[0] != 0 { // the encoder's name, and after 21 bytes two numbers of 12 bits
		skipped = int64(b[21])<<4 + int64(b[22])>>4 + int64(b[22]&0xf)<<8 + int64(b[23])
	}
	return frames, size, skipped
}

// mostJunk is how much of a file may be neither sound nor tag.
const mostJunk = 64 << 10

// countFrames adds up the frames from a place to the end.
func (t *tape) countFrames(at int64) (sum time.Duration, err error) {
	samples, last, junk := int64(0), frame{rate: 1}, int64(0)
	for at < t.size {
		f, ok := t.frame(at)
		if !ok {
			next := t.afterTags(at)
			if next == at {
				if next, ok = t.resync(at); !ok {
					next = t.size
				}
				junk += next - at
			}
			if junk > mostJunk {
				return 0, errNoRecording
			}
			at = next
			continue
		}
		if at += int64(f.length); at > t.size {
			return 0, errSoundCut
		}
		if f.rate != last.rate { // of files that were joined
			sum += last.lasts(samples)
			samples, last = 0, f
		}
		samples += int64(f.samples)
	}
	return sum + last.lasts(samples), nil
}

// resync finds the next place after one at which three frames follow each
// other, as nothing else does by chance.
func (t *tape) resync(at int64) (int64, bool) {
	for end := min(at+mostJunk, t.size-4); at < end; at++ {
		if a, ok := t.frame(at); ok {
			if b, ok := t.frame(at + int64(a.length)); ok && t.follows(at+int64(a.length+b.length)) {
				return at, true
			}
		}
	}
	return 0, false
}
