const LEAST = [20, 19]

/** What to tell somebody whose Node is too old; undefined where it will do. `version` is "20.19.0". */
export function nodeProblem(version) {
  const parts = version.split('.').map(Number)
  const old = parts[0] < LEAST[0] || (parts[0] === LEAST[0] && parts[1] < LEAST[1])
  if (!old) return undefined
  return `Underlid needs Node ${LEAST.join('.')} or newer; this is Node ${version}. Install a newer Node, then run this again.`
}
