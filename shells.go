package main

// Rules of this file: a row for each shell, and what it reads. The scripts hold no word of
// the command line: they ask the program for words, and where there are none they offer the
// names of .toml files. Nothing that was typed is carried out. With 0=zsh about it the parser
// says what each command is for.

// shell is one that can complete a command line.
type shell struct {
	name   string
	file   string // what it reads whenever it begins
	line   string // what makes it read the script
	script string
}

var shells = []shell{
	{"bash", "in ~/.bashrc", `eval "$(tuckmark completion bash)"`, bashScript},
	{"zsh", "in ~/.zshrc", `autoload -U compinit && compinit && eval "$(tuckmark completion zsh)"`, zshScript},
	{"fish", "in ~/.config/fish/config.fish", `tuckmark completion fish | source`, fishScript},
	{"powershell", "in the file that $PROFILE names", `tuckmark completion powershell | Out-String | Invoke-Expression`, powershellScript},
}

// bashScript keeps to what bash 3.2 knows, which is that of macOS. bash parts words at an
// equals sign.
const bashScript = `# tuckmark for bash: the Tab key finishes commands, options and .toml files
_tuckmark() {
	local word=${COMP_WORDS[COMP_CWORD]} asked=() one offered name
	for one in "${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
		[[ $one == "=" ]] || asked+=("$one")
	done
	[[ $word == "=" ]] && word=
	[[ $word == -* ]] && asked+=("$word")
	offered=$("${1/#\~/$HOME}" "${asked[@]}" --generate-bash-completion 2>/dev/null)
	COMPREPLY=()
	if [[ -n $offered ]]; then
		COMPREPLY=($(compgen -W "$offered" -- "$word"))
		return
	fi
	compopt -o filenames 2>/dev/null
	word=${word//[\\\"\']/}
	while IFS= read -r name; do
		COMPREPLY+=("$name")
	done < <(compgen -f -X '!*.toml' -- "$word"; compgen -d -- "$word")
}
complete -o default -F _tuckmark tuckmark
`

// zshScript can also stand in a folder of $fpath as _tuckmark.
const zshScript = `#compdef tuckmark
# tuckmark for zsh: the Tab key finishes commands, options and .toml files
_tuckmark() {
	local -a asked offered
	asked=("${(@Q)words[1,CURRENT-1]}")
	[[ $PREFIX == -* ]] && asked+=("$PREFIX")
	offered=("${(@f)$(env 0=zsh "${(@)asked}" --generate-bash-completion 2>/dev/null)}")
	if [[ -n $offered ]]; then
		_describe tuckmark offered
	else
		_files -g '*.toml'
	fi
}
if [[ $funcstack[1] == _tuckmark ]]; then
	_tuckmark
else
	compdef _tuckmark tuckmark
fi
`

const powershellScript = `# tuckmark for PowerShell: the Tab key finishes commands, options and .toml files
Register-ArgumentCompleter -Native -CommandName tuckmark -ScriptBlock {
	param($word, $line, $cursor)
	$asked = @($line.CommandElements | Select-Object -Skip 1 | Where-Object { $_.Extent.EndOffset -lt $cursor } | ForEach-Object { "$_" })
	if ("$word".StartsWith('-')) { $asked += "$word" }
	$offered = @(& "$($line.CommandElements[0])" @asked --generate-bash-completion 2>$null)
	if ($offered.Count -eq 0) {
		$offered = @(Get-ChildItem -Filter "$word*.toml" -Name | ForEach-Object { if ($_ -match ' ') { "'$_'" } else { $_ } })
	}
	$offered | Where-Object { $_ -like "$word*" -or $_ -like "'$word*" } |
		ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
}
`

// fishScript says with a tab what a word means, and the program with a colon.
const fishScript = `# tuckmark for fish: the Tab key finishes commands, options and .toml files
function __tuckmark_words
	set -l asked (commandline -opc)
	set -l word (commandline -ct)
	string match -q -- '-*' $word; and set -a asked $word
	set -l offered (env 0=zsh $asked --generate-bash-completion 2>/dev/null)
	if set -q offered[1]
		string replace : \t -- $offered
	else
		__fish_complete_suffix .toml | string match -r '.*(?:\.toml|/)(?:\t.*)?$'
	end
end
complete -c tuckmark -f -a '(__tuckmark_words)'
`
