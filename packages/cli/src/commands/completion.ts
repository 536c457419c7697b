import { EXIT } from '../host/failure.js';
import { type AnyCommand, command } from '../line/command.js';
import { COMPLETION_FLAG } from '../line/complete.js';

export const completion: AnyCommand = command<object>({
  verb: 'completion',
  summary: 'print a completion script for bash and zsh',
  options: {},
  examples: [
    ['$0 completion >> ~/.bashrc', 'in bash, from the next shell on'],
    ['$0 completion >> ~/.zshrc', 'in zsh, below the line with compinit'],
  ],
  run: async (_, host) => {
    host.out(SCRIPT);
    return EXIT.done;
  },
});

const SCRIPT = `# Completion of tinwright for bash and zsh.
# bash: tinwright completion >> ~/.bashrc
# zsh:  tinwright completion >> ~/.zshrc, below the line with compinit
_tinwright_completions() {
  local IFS=$'\\n'
  if [ -n "\${ZSH_VERSION:-}" ]; then
    local -a found
    found=($(tinwright ${COMPLETION_FLAG} "\${(@)words[1,CURRENT]}" 2>/dev/null))
    if [ \${#found[@]} -gt 0 ]; then compadd -a found; else _files; fi
  else
    COMPREPLY=($(tinwright ${COMPLETION_FLAG} "\${COMP_WORDS[@]:0:COMP_CWORD+1}" 2>/dev/null))
  fi
}
if [ -n "\${ZSH_VERSION:-}" ]; then
  compdef _tinwright_completions tinwright
else
  complete -o default -F _tinwright_completions tinwright
fi
`;
