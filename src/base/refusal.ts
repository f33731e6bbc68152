/**
 * What the call or the machine does not allow, thrown with words for the reader: one line or more, no stack. The command prints them
 * and ends with exit code 2. Anything else that is thrown is a fault of ours.
 */
export class Refusal extends Error {
  readonly lines: readonly string[]

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'))
    this.name = 'Refusal'
    this.lines = lines
  }
}
