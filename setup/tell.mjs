/** One line for the reader, plain text. Steps are told on standard error's quieter sibling: standard output, one line each. */
export function tell(line = '') {
  process.stdout.write(`${line}\n`)
}

/** Ends with the code of "the call or the machine did not allow it", after saying why. */
export function stop(...lines) {
  for (const line of lines) process.stderr.write(`${line}\n`)
  process.exit(2)
}

/** "0.4 s", "1 min 12 s". */
export function duration(ms) {
  if (ms < 59_500) return `${(ms / 1000).toFixed(1)} s`
  const seconds = Math.round(ms / 1000)
  return `${Math.floor(seconds / 60)} min ${seconds % 60} s`
}

/** The environment for a child: no color codes where nobody sees colors, and none of npm's side talk. */
export function childEnv(env, isTerminal) {
  const quiet = { ...env, npm_config_audit: 'false', npm_config_fund: 'false', npm_config_update_notifier: 'false' }
  if (isTerminal && !('NO_COLOR' in env)) return quiet
  delete quiet.FORCE_COLOR
  return { ...quiet, NO_COLOR: '1' }
}
