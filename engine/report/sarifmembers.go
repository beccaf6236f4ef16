package report

import (
	"encoding/json"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/ruleset"
)

// The members of SARIF 2.1.0 that a report has, under the names of the standard
// and in the order in which they are written.

type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool              sarifTool         `json:"tool"`
	AutomationDetails sarifAutomation   `json:"automationDetails"`
	Invocations       []sarifInvocation `json:"invocations"`
	Artifacts         []json.RawMessage `json:"artifacts"`
	Results           []json.RawMessage `json:"results"`
	ColumnKind        string            `json:"columnKind"`
	Properties        sarifRunFacts     `json:"properties"`
}

type sarifAutomation struct {
	ID string `json:"id"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name    string      `json:"name"`
	Version string      `json:"version,omitempty"`
	Rules   []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID                   string        `json:"id"`
	ShortDescription     sarifMessage  `json:"shortDescription"`
	FullDescription      sarifMessage  `json:"fullDescription"`
	Help                 sarifMessage  `json:"help"`
	DefaultConfiguration sarifLevel    `json:"defaultConfiguration"`
	Properties           sarifRuleBack `json:"properties"`
}

type sarifLevel struct {
	Level string `json:"level"`
}

type sarifRuleBack struct {
	Level  ruleset.Level `json:"level"`
	Room   string        `json:"room"`
	Clause string        `json:"clause"`
}

type sarifMessage struct {
	Text string `json:"text"`
}

type sarifInvocation struct {
	ExecutionSuccessful bool                `json:"executionSuccessful"`
	Notifications       []sarifNotification `json:"toolExecutionNotifications,omitempty"`
}

type sarifNotification struct {
	Level     string          `json:"level"`
	Message   sarifMessage    `json:"message"`
	Locations []sarifLocation `json:"locations"`
}

type sarifRunFacts struct {
	RuleSet  record.RuleSet `json:"rule_set"`
	Summary  *Summary       `json:"summary,omitempty"` // of a batch
	Cautions []string       `json:"cautions"`
}

// sarifDocument is what one document contributes to the run.
type sarifDocument struct {
	Artifact      sarifArtifact       `json:"artifact"`
	Results       []sarifResult       `json:"results"`
	Notifications []sarifNotification `json:"notifications"`
}

type sarifArtifact struct {
	Location   sarifPlace          `json:"location"`
	Roles      []string            `json:"roles"`
	Hashes     map[string]string   `json:"hashes,omitempty"`
	Properties *sarifArtifactFacts `json:"properties,omitempty"` // nil where it could not be checked
}

type sarifArtifactFacts struct {
	Reference string `json:"reference"`
	Passes    bool   `json:"passes"`
	Nothing   bool   `json:"nothingToCheck,omitempty"`
	Summary   Counts `json:"summary"`
}

type sarifResult struct {
	RuleID              string             `json:"ruleId"`
	RuleIndex           int                `json:"ruleIndex"`
	Kind                string             `json:"kind"`
	Level               string             `json:"level"`
	Message             sarifMessage       `json:"message"`
	Locations           []sarifLocation    `json:"locations"`
	RelatedLocations    []sarifLocation    `json:"relatedLocations,omitempty"`
	PartialFingerprints map[string]string  `json:"partialFingerprints"`
	Suppressions        []sarifSuppression `json:"suppressions,omitempty"`
	Properties          sarifResultFacts   `json:"properties"`
}

type sarifLocation struct {
	PhysicalLocation sarifPhysical  `json:"physicalLocation"`
	Message          *sarifMessage  `json:"message,omitempty"`
	LogicalLocations []sarifLogical `json:"logicalLocations,omitempty"`
}

type sarifPhysical struct {
	ArtifactLocation sarifPlace   `json:"artifactLocation"`
	Region           *sarifRegion `json:"region,omitempty"`
}

type sarifPlace struct {
	URI string `json:"uri"`
}

type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
}

type sarifLogical struct {
	Name               string `json:"name"`
	FullyQualifiedName string `json:"fullyQualifiedName,omitempty"`
}

type sarifSuppression struct {
	Kind          string `json:"kind"`
	Status        string `json:"status"`
	Justification string `json:"justification"`
}

// sarifResultFacts are the figures behind a finding, for programs.
type sarifResultFacts struct {
	Outcome   judge.Outcome `json:"outcome"`
	Subject   string        `json:"subject"`
	At        string        `json:"at"`
	Value     *jsonMeasured `json:"value"`
	Limit     *jsonLimit    `json:"limit"`
	MarginPct *float64      `json:"margin_pct"`
	Missing   []string      `json:"missing"`
	Clause    string        `json:"clause"`
}
