#!/usr/bin/env bash
# Measures sunclause beside the opa command of the version that it is built with, and
# prints medians of ratios pair by pair. Needs Go; opa is built into a folder that is
# removed at the end. The figures of docs/speed.md come from it.
set -euo pipefail
cd "$(dirname "$0")/.."
tools=$(mktemp -d)
trap 'rm -rf "$tools"' EXIT
version=$(go list -m -f '{{.Version}}' github.com/open-policy-agent/opa)
command -v opa >/dev/null || GOBIN=$tools go install "github.com/open-policy-agent/opa@$version"
export PATH=$PATH:$tools
go test ./cmd/sunclause -run '^$' -bench '^BenchmarkCold$' -benchtime 25x
go test ./cmd/sunclause -run '^$' -bench '^BenchmarkBatch$' -benchtime 5x
go test ./cmd/sunclause -run '^$' -bench '^BenchmarkManyJobs$' -benchtime 1x
go test ./engine/judge -run '^$' -bench . -benchmem
