package build

import (
	"fmt"
	"strconv"
	"time"

	"stillroom/content"
)

// An episodeNode holds an episode: https://schema.org/PodcastEpisode.
type episodeNode struct {
	Type          string        `json:"@type"`
	ID            string        `json:"@id"`
	URL           string        `json:"url"`
	Name          string        `json:"name"`
	Description   string        `json:"description,omitempty"`
	DatePublished string        `json:"datePublished,omitempty"`
	InLanguage    string        `json:"inLanguage"`
	EpisodeNumber int           `json:"episodeNumber,omitempty"`
	Duration      string        `json:"duration,omitempty"`
	Series        *seriesNode   `json:"partOfSeries,omitempty"`
	Season        *seasonNode   `json:"partOfSeason,omitempty"`
	Audio         *audioNode    `json:"associatedMedia,omitempty"`
	Mentions      []mentionNode `json:"mentions,omitempty"`
}

type seriesNode struct {
	Type  string `json:"@type"`
	Name  string `json:"name"`
	URL   string `json:"url"`
	Feed  string `json:"webFeed"`
	Image string `json:"image,omitempty"`
}

type seasonNode struct {
	Type   string `json:"@type"`
	Name   string `json:"name"`
	Number int    `json:"seasonNumber"`
}

type audioNode struct {
	Type     string     `json:"@type"`
	URL      string     `json:"contentUrl"`
	Format   string     `json:"encodingFormat,omitempty"`
	Duration string     `json:"duration,omitempty"`
	Size     string     `json:"contentSize,omitempty"`
	Caption  *mediaNode `json:"caption,omitempty"`
}

type mediaNode struct {
	Type string `json:"@type"`
	URL  string `json:"contentUrl"`
}

func (e *edition) episodeNode(ep *content.Episode) node {
	address := e.absolute(episodeAddress(ep))
	n := episodeNode{
		Type:          "PodcastEpisode",
		ID:            address + "#episode",
		URL:           address,
		Name:          ep.Name.V,
		Description:   ep.Summary.V,
		DatePublished: ep.Published.V.String(),
		InLanguage:    e.language(),
		EpisodeNumber: ep.Number.V,
		Series:        e.seriesNode(),
		Audio:         e.audioNode(ep),
	}
	if n.Audio != nil {
		n.Duration = n.Audio.Duration
	}
	if ep.Series.Set() {
		n.Season = &seasonNode{Type: "PodcastSeason", Name: fmt.Sprintf("Series %d", ep.Series.V), Number: ep.Series.V}
	}
	for _, r := range e.spokenOf(ep) { // a Recipe stands in full on its own page, and nowhere else
		n.Mentions = append(n.Mentions, e.mention("CreativeWork", recipeAddress(r), "#recipe", r.Name.V))
	}
	return n
}

func (e *edition) seriesNode() *seriesNode {
	p := e.settings.Programme
	if p == nil {
		return nil
	}
	n := &seriesNode{Type: "PodcastSeries", Name: p.Name.V, URL: e.absolute(showNotesAddress), Feed: e.absolute(programmeAddress)}
	if img, _ := e.assets.Picture(p.Picture.V); img.Cover != nil {
		n.Image = e.absolute(img.Cover.Src)
	}
	return n
}

// audioNode is the recording; nil if there is nothing to listen to.
func (e *edition) audioNode(ep *content.Episode) *audioNode {
	rec := e.recording(ep)
	if rec == nil {
		return nil
	}
	n := &audioNode{Type: "AudioObject", URL: e.outside(rec.Src), Format: rec.Type}
	n.Duration = isoDuration(int64(e.plays(ep).Round(time.Second) / time.Second))
	if b := e.audioBytes(ep); b > 0 {
		n.Size = strconv.FormatInt(b, 10) + " B"
	}
	if src, ok := e.assets.Media(mediaPath(ep, ep.Transcript.V)); ok {
		n.Caption = &mediaNode{Type: "MediaObject", URL: e.absolute(src)}
	}
	return n
}

// outside makes an address absolute unless it is one of another site's.
func (e *edition) outside(address string) string {
	if address != "" && address[0] == '/' {
		return e.absolute(address)
	}
	return address
}

// audioBytes is the true size of a recording that is published with the site,
// and else the one that the author gives.
func (e *edition) audioBytes(ep *content.Episode) int64 {
	if f, ok := e.recorded(ep); ok {
		return f.Size
	}
	return int64(ep.Audio.Bytes.V)
}

// plays is how long a recording that is published with the site plays, and else
// what the author says; 0 if nobody knows.
func (e *edition) plays(ep *content.Episode) time.Duration {
	if f, ok := e.recorded(ep); ok && f.Sound.Duration > 0 {
		return f.Sound.Duration
	}
	s, _ := inSeconds(ep.Audio.Duration.V)
	return time.Duration(s) * time.Second
}

// recorded is the recording that lies beside an episode.
func (e *edition) recorded(ep *content.Episode) (content.File, bool) {
	f, ok := e.site.Media[mediaPath(ep, ep.Audio.File.V)]
	return f, ok && ep.Audio.File.V != ""
}
