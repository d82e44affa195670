package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"io"
	"io/fs"
	"net/url"
	"path"
	"strings"
	"unicode/utf8"

	"stillroom/content"
	"stillroom/validate"
)

// What follows is a log of the Static Analysis Results Interchange Format,
// version 2.1.0 (OASIS, with errata 01): as much of it as there is to say.
type (
	sarifLog struct {
		Version string     `json:"version"`
		Runs    []sarifRun `json:"runs"`
	}
	sarifRun struct {
		Tool        sarifTool                `json:"tool"`
		Bases       map[string]sarifArtifact `json:"originalUriBaseIds"`
		ColumnKind  string                   `json:"columnKind"`
		Invocations []sarifInvocation        `json:"invocations"`
		Results     []sarifResult            `json:"results"`
	}
	sarifTool struct {
		Driver sarifDriver `json:"driver"`
	}
	sarifDriver struct {
		Name  string      `json:"name"`
		Rules []sarifRule `json:"rules"`
	}
	sarifRule struct {
		ID      string        `json:"id"`
		Name    string        `json:"name"`
		Short   sarifText     `json:"shortDescription"`
		Full    sarifText     `json:"fullDescription"`
		Help    sarifText     `json:"help"`
		HelpURI string        `json:"helpUri,omitempty"`
		Default sarifSeverity `json:"defaultConfiguration"`
	}
	sarifSeverity struct {
		Level string `json:"level"`
	}
	sarifText struct {
		Text string `json:"text"`
	}
	sarifInvocation struct {
		Successful bool `json:"executionSuccessful"`
	}
	sarifResult struct {
		Rule         string             `json:"ruleId"`
		Index        int                `json:"ruleIndex"`
		Level        string             `json:"level"`
		Message      sarifText          `json:"message"`
		Locations    []sarifLocation    `json:"locations"`
		Related      []sarifLocation    `json:"relatedLocations,omitempty"`
		Fingerprints map[string]string  `json:"partialFingerprints"`
		Suppressions []sarifSuppression `json:"suppressions,omitempty"`
	}
	sarifSuppression struct {
		Kind          string `json:"kind"`
		Justification string `json:"justification"`
	}
	sarifLocation struct {
		ID       int           `json:"id,omitempty"`
		Message  *sarifText    `json:"message,omitempty"`
		Physical sarifPhysical `json:"physicalLocation"`
	}
	sarifPhysical struct {
		Artifact sarifArtifact `json:"artifactLocation"`
		Region   *sarifRegion  `json:"region,omitempty"`
	}
	sarifArtifact struct {
		URI         string     `json:"uri,omitempty"`
		Base        string     `json:"uriBaseId,omitempty"`
		Description *sarifText `json:"description,omitempty"`
	}
	sarifRegion struct {
		Line   int `json:"startLine"`
		Column int `json:"startColumn,omitempty"`
	}
)

// siteBase stands for the site's folder: where that lies is nobody's business
// but the reader's.
const siteBase = "SITE"

// writeSARIF writes findings for the programs that gather those of many tools.
// What the author has accepted is in it, as suppressed. The files of fsys, the
// site's folder, are read for their lines.
func writeSARIF(w io.Writer, rep validate.Report, fsys fs.FS) error {
	run := sarifRun{
		Tool:        sarifTool{sarifDriver{Name: "Stillroom", Rules: sarifRules()}},
		Bases:       map[string]sarifArtifact{siteBase: {Description: &sarifText{"The folder that holds content/."}}},
		ColumnKind:  "utf16CodeUnits",
		Invocations: []sarifInvocation{{Successful: true}},
		Results:     []sarifResult{},
	}
	lines := lineReader{fsys: fsys, files: map[string][][]byte{}}
	index := map[string]int{}
	for i, r := range validate.Rules {
		index[r.ID] = i
	}
	for _, f := range rep.Findings {
		run.Results = append(run.Results, sarifOf(f, index[f.Rule], lines))
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(sarifLog{Version: "2.1.0", Runs: []sarifRun{run}})
}

func sarifRules() []sarifRule {
	var rules []sarifRule
	for _, r := range validate.Rules {
		rules = append(rules, sarifRule{
			ID:      r.ID,
			Name:    pascalCase(r.ID),
			Short:   sarifText{sentence(r.Summary)},
			Full:    sarifText{flowing(r.Doc)},
			Help:    sarifText{strings.TrimSpace(r.Doc) + "\n\nSource: " + dated(r.Source)},
			HelpURI: webAddress(r.Source.Address),
			Default: sarifSeverity{sarifLevel(r.Severity)},
		})
	}
	return rules
}

func sarifOf(f validate.Finding, rule int, lines lineReader) sarifResult {
	text := sentence(f.Message)
	if advice := strings.TrimSpace(f.Advice); advice != "" {
		text += " " + sentence(advice)
	}
	if source := sourceText(f.Source); source != "" {
		text += " Source: " + source
	}
	r := sarifResult{
		Rule: f.Rule, Index: rule, Level: sarifLevel(f.Severity),
		Message:      sarifText{text},
		Locations:    []sarifLocation{{Physical: lines.physical(f.Pos)}},
		Fingerprints: map[string]string{"stillroomFinding/v1": fingerprint(f)},
	}
	for i, n := range f.Notes {
		r.Related = append(r.Related, sarifLocation{ID: i + 1, Message: &sarifText{sentence(n.Message)}, Physical: lines.physical(n.Pos)})
	}
	if f.Accepted != "" {
		r.Suppressions = []sarifSuppression{{Kind: "inSource", Justification: f.Accepted}}
	}
	return r
}

func sarifLevel(s validate.Severity) string {
	if s == validate.Advice {
		return "note"
	}
	return s.String()
}

// fingerprint tells a finding from others wherever its line has moved to.
func fingerprint(f validate.Finding) string {
	sum := sha256.Sum256([]byte(f.Rule + "\n" + f.Pos.File + "\n" + f.Message))
	return hex.EncodeToString(sum[:8])
}

// A lineReader keeps the lines of the files that findings are in.
type lineReader struct {
	fsys  fs.FS
	files map[string][][]byte
}

func (l lineReader) physical(p content.Pos) sarifPhysical {
	at := sarifPhysical{Artifact: sarifArtifact{URI: (&url.URL{Path: path.Clean(p.File)}).EscapedPath(), Base: siteBase}}
	if p.Line > 0 {
		at.Region = &sarifRegion{Line: p.Line, Column: l.column(p)}
	}
	return at
}

// column turns a place's column, which counts bytes, into one that counts
// UTF-16 code units. Without the file it stays as it is.
func (l lineReader) column(p content.Pos) int {
	lines, ok := l.files[p.File]
	if !ok {
		text, _ := fs.ReadFile(l.fsys, p.File)
		lines = bytes.Split(bytes.TrimPrefix(text, []byte("\uFEFF")), []byte("\n"))
		l.files[p.File] = lines
	}
	if p.Col == 0 || p.Line > len(lines) {
		return p.Col
	}
	line := lines[p.Line-1]
	return utf16Units(line[:min(p.Col-1, len(line))]) + 1
}

// utf16Units counts the code units that a text takes in UTF-16.
func utf16Units(text []byte) int {
	n := 0
	for len(text) > 0 {
		r, size := utf8.DecodeRune(text)
		n++
		if r > 0xFFFF {
			n++
		}
		text = text[size:]
	}
	return n
}

// pascalCase makes TimeShort of time-short.
func pascalCase(id string) string {
	var b strings.Builder
	for part := range strings.SplitSeq(id, "-") {
		b.WriteString(strings.ToUpper(part[:1]) + part[1:])
	}
	return b.String()
}

// sentence begins a clause with a capital letter and ends it with a full stop.
func sentence(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	s = strings.ToUpper(string(r)) + s[size:]
	if strings.HasSuffix(s, ".") || strings.HasSuffix(s, "?") {
		return s
	}
	return s + "."
}

// flowing joins the lines of a text.
func flowing(s string) string { return strings.Join(strings.Fields(s), " ") }

// webAddress gives an address that a browser opens, or nothing.
func webAddress(s string) string {
	if strings.HasPrefix(s, "https://") || strings.HasPrefix(s, "http://") {
		return s
	}
	return ""
}
