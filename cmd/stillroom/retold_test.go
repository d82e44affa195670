package main

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"regexp"
	"strings"
)

var (
	nameLine      = regexp.MustCompile(`(?m)^name: (.*)$`)
	publishedLine = regexp.MustCompile(`(?m)^(published|updated): .*\n`)
	tagsLine      = regexp.MustCompile(`(?m)^tags: \[.*\]\n`)
	lists         = regexp.MustCompile(`(?m)^(formerly|batches|checked|inspired_by):.*\n( .*\n)*`)
	pictureLines  = regexp.MustCompile(`(?m)^picture:\n( .*\n)*`)
	headNote      = []byte("\n---\n")
)

// retold is a recipe as somebody else has it from the same tested process.
func retold(text []byte, i int, slugOf func(int) string) []byte {
	random := rand.New(rand.NewPCG(7, uint64(i)))
	of := func(words []string) string { return words[random.IntN(len(words))] }
	head := fmt.Sprintf("published: 20%02d-%02d-%02d\n", 8+i%18, 1+i%12, 1+i%28)
	if i%5 == 0 {
		head += fmt.Sprintf("updated: 2026-%02d-%02d\n", 1+i%10, 1+i%28)
	}
	head += fmt.Sprintf("tags: [%s, %s, shelf %d]\n", of(occasions), of(people), i%40)
	head += batches(random, i)

	text = nameLine.ReplaceAll(text, fmt.Appendf(nil, "name: %s’s $1, no. %d", of(people), i))
	text = lists.ReplaceAll(publishedLine.ReplaceAll(tagsLine.ReplaceAll(text, nil), nil), nil)
	if i%3 > 0 {
		text = pictureLines.ReplaceAll(text, nil)
	}
	notes := "\n" + paragraphs(random, 1+random.IntN(4))
	if other := i - 1 - random.IntN(20); other >= 0 {
		notes += fmt.Sprintf("\nThe jars from [%s shelf](/recipes/%s/) go well with it.\n", of(people), slugOf(other))
	}
	return bytes.Replace(text, headNote, []byte("\n"+head+"---\n"+notes), 1)
}

func batches(random *rand.Rand, i int) string {
	var b strings.Builder
	for k := range i % 4 {
		if k == 0 {
			b.WriteString("batches:\n")
		}
		fmt.Fprintf(&b, "  - made: 20%02d-%02d-%02d\n    altitude: 1,350 ft\n    seals_failed: %d\n    note: %s\n    public: true\n",
			10+(i+k)%16, 1+(i+k)%12, 1+i%28, random.IntN(2), sentences[random.IntN(len(sentences))])
	}
	return b.String()
}

func paragraphs(random *rand.Rand, n int) string {
	var b strings.Builder
	for range n {
		b.WriteString("\n")
		for range 2 + random.IntN(5) {
			b.WriteString(sentences[random.IntN(len(sentences))] + "\n")
		}
	}
	return b.String()
}

// evening is an episode about the recipes before number i.
func evening(i int, slugOf func(int) string) []byte {
	random := rand.New(rand.NewPCG(8, uint64(i)))
	return fmt.Appendf(nil, `---
name: Evening no. %d at the long table
number: %d
series: 9
published: 20%02d-%02d-%02d
summary: %s
audio:
  address: https://sound.example/evening-%d.mp3
  bytes: %d
  duration: %d min
  type: audio/mpeg
recipes: [%s, %s, %s]
chapters:
  - 0:00 Good evening
  - { at: "4:10", title: From the shelf, recipe: %s }
  - 9:30 Letters
guid: evening-%d-of-the-long-table
---
%s`, i/30, i/30, 10+i%16, 1+i%12, 1+i%28, sentences[random.IntN(len(sentences))], i/30, 9_000_000+i, 20+i%30,
		slugOf(i-1), slugOf(i-7), slugOf(i-13), slugOf(i-1), i/30, paragraphs(random, 2+random.IntN(3)))
}

var people = strings.Split("Aldous Berit Cosima Doreen Esben Fenna Gudrun Hettie Ivo Jorunn Keziah Lorcan Mairead Nils Odile Petra Quill Rosalind Sunniva Tobias Una Verena Wilf Xanthe Ysolde Zebedee", " ")

var occasions = []string{"for the fair", "from the hedge", "gifts", "a wet week", "the big pan", "school holidays", "after frost", "market day"}

var sentences = []string{
	"The rain came in sideways and we stayed by the stove.",
	"Half of them were bruised, and the bruised half went to the hens.",
	"I write the year on the lid, since memory is no shelf.",
	"My neighbour swears by her mother's pan; I swear at mine.",
	"It takes longer than you think, and then it is done all at once.",
	"The children did the stones, and counted them, and lost count.",
	"Nobody agreed about the spoon.",
	"There was a wasp in the scullery all afternoon, and nobody got anything done.",
	"What did not fit into the jars we ate from the bowl.",
	"I have made it every year since the roof was mended, and never twice on the same day.",
	"Somebody left the gate open, *again*, and the picking was over by noon.",
	"It looks like nothing much in the pan and like a church window in the jar.",
	"You will want an apron, and somebody to answer the door.",
	"The recipe came on the back of a seed packet, and I checked it against the tested one before I lit the stove.",
	"The cat has no part in this.",
}
