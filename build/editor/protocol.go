package editor

import "encoding/json"

// The messages of the protocol that are used here, with those of their members
// that are. Language Server Protocol 3.17,
// https://microsoft.github.io/language-server-protocol/specifications/lsp/3.17/specification/

type position struct {
	Line      int `json:"line"`      // from 0
	Character int `json:"character"` // from 0, in units of the encoding agreed upon
}

type textRange struct {
	Start position `json:"start"`
	End   position `json:"end"`
}

type location struct {
	URI   string    `json:"uri"`
	Range textRange `json:"range"`
}

type initializeParams struct {
	RootURI          string `json:"rootUri"`
	WorkspaceFolders []struct {
		URI string `json:"uri"`
	} `json:"workspaceFolders"`
	Capabilities struct {
		General struct {
			PositionEncodings []string `json:"positionEncodings"`
		} `json:"general"`
		Workspace struct {
			WorkspaceEdit struct {
				DocumentChanges bool `json:"documentChanges"`
			} `json:"workspaceEdit"`
			DidChangeWatchedFiles struct {
				DynamicRegistration bool `json:"dynamicRegistration"`
			} `json:"didChangeWatchedFiles"`
		} `json:"workspace"`
	} `json:"capabilities"`
}

type initializeResult struct {
	Capabilities capabilities `json:"capabilities"`
	ServerInfo   struct {
		Name string `json:"name"`
	} `json:"serverInfo"`
}

type capabilities struct {
	PositionEncoding   string            `json:"positionEncoding"`
	TextDocumentSync   syncOptions       `json:"textDocumentSync"`
	CompletionProvider completionOptions `json:"completionProvider"`
	HoverProvider      bool              `json:"hoverProvider"`
	DefinitionProvider bool              `json:"definitionProvider"`
	ReferencesProvider bool              `json:"referencesProvider"`
	CodeActionProvider codeActionOptions `json:"codeActionProvider"`
}

type syncOptions struct {
	OpenClose bool `json:"openClose"`
	Change    int  `json:"change"`
}

// incremental is the TextDocumentSyncKind for changes by range.
const incremental = 2

type completionOptions struct {
	TriggerCharacters []string `json:"triggerCharacters"`
}

type codeActionOptions struct {
	CodeActionKinds []string `json:"codeActionKinds"`
}

type textDocument struct {
	URI     string `json:"uri"`
	Version int    `json:"version"`
	Text    string `json:"text"`
}

type documentParams struct {
	TextDocument textDocument `json:"textDocument"`
}

type changeParams struct {
	TextDocument   textDocument    `json:"textDocument"`
	ContentChanges []contentChange `json:"contentChanges"`
}

// A contentChange puts a text in the place of a range, or of the whole
// document.
type contentChange struct {
	Range *textRange `json:"range"`
	Text  string     `json:"text"`
}

type watchedParams struct {
	Changes []struct {
		URI string `json:"uri"`
	} `json:"changes"`
}

type placeParams struct {
	TextDocument textDocument `json:"textDocument"`
	Position     position     `json:"position"`
}

type actionParams struct {
	TextDocument textDocument `json:"textDocument"`
	Range        textRange    `json:"range"`
	Context      struct {
		Diagnostics []diagnostic `json:"diagnostics"`
		Only        []string     `json:"only"`
	} `json:"context"`
}

type publishParams struct {
	URI         string       `json:"uri"`
	Version     *int         `json:"version,omitempty"`
	Diagnostics []diagnostic `json:"diagnostics"`
}

type diagnostic struct {
	Range       textRange `json:"range"`
	Severity    int       `json:"severity"`
	Code        string    `json:"code,omitempty"`
	Description *linked   `json:"codeDescription,omitempty"`
	Source      string    `json:"source"`
	Message     string    `json:"message"`
	Related     []related `json:"relatedInformation,omitempty"`
}

type linked struct {
	Href string `json:"href"`
}

type related struct {
	Location location `json:"location"`
	Message  string   `json:"message"`
}

type completionItem struct {
	Label         string    `json:"label"`
	Kind          int       `json:"kind"`
	Detail        string    `json:"detail,omitempty"`
	Documentation *markup   `json:"documentation,omitempty"`
	SortText      string    `json:"sortText"`
	TextEdit      *textEdit `json:"textEdit"`
}

// The kinds of completion items.
const (
	itemReference = 18
	itemValue     = 12
	itemProperty  = 10
)

type textEdit struct {
	Range   textRange `json:"range"`
	NewText string    `json:"newText"`
}

type markup struct {
	Kind  string `json:"kind"`
	Value string `json:"value"`
}

type hover struct {
	Contents markup    `json:"contents"`
	Range    textRange `json:"range"`
}

type codeAction struct {
	Title       string        `json:"title"`
	Kind        string        `json:"kind"`
	Diagnostics []diagnostic  `json:"diagnostics,omitempty"`
	IsPreferred bool          `json:"isPreferred,omitempty"`
	Edit        workspaceEdit `json:"edit"`
}

// A workspaceEdit has one of the two: the second is for a version of the document
// alone.
type workspaceEdit struct {
	Changes         map[string][]textEdit `json:"changes,omitempty"`
	DocumentChanges []documentEdit        `json:"documentChanges,omitempty"`
}

type documentEdit struct {
	TextDocument versioned  `json:"textDocument"`
	Edits        []textEdit `json:"edits"`
}

type versioned struct {
	URI     string `json:"uri"`
	Version int    `json:"version"`
}

type messageParams struct {
	Type    int    `json:"type"`
	Message string `json:"message"`
}

// messageWarning is the type of the messages that are shown.
const messageWarning = 2

type registrationParams struct {
	Registrations []registration `json:"registrations"`
}

type registration struct {
	ID      string          `json:"id"`
	Method  string          `json:"method"`
	Options json.RawMessage `json:"registerOptions"`
}
