import { createHash } from 'node:crypto'
import { deflateSync, inflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { packed, withEvenStreams } from '../../src/render/pdf-streams.ts'

const CONTENT = 'BT\n/F4 11 Tf\n'.repeat(400)
const packedAt = (level: number): string => {
  const body = deflateSync(Buffer.from(CONTENT, 'latin1'), { level }).toString('latin1')
  return `<</Filter /FlateDecode\n/Length1 77\n/Length ${body.length}>> stream\n${body}\nendstream`
}
const even = (object: string): string => withEvenStreams(new Map([[7, object]])).get(7) ?? ''

describe('what a browser packed', () => {
  it('is the same however it was packed, says its new length and keeps its content', () => {
    expect(packedAt(1)).not.toBe(packedAt(9))
    expect(even(packedAt(1))).toBe(even(packedAt(9)))
    const [, length = '', body = ''] =
      /\/Length1 77\n\/Length (\d+)>> stream\n([^]*)\nendstream$/u.exec(even(packedAt(1))) ?? []
    expect(body.length).toBe(Number(length))
    expect(inflateSync(Buffer.from(body, 'latin1')).toString('latin1')).toBe(CONTENT)
  })

  it('is the same on every machine: by no packer that looks at the processor or comes with Node', () => {
    const hash = createHash('sha256')
      .update(packed(Buffer.from(CONTENT, 'latin1')))
      .digest('hex')
    // What it gave first. Another packer, or another version of it, gives every binder other bytes: that has to be a wish.
    expect(hash.slice(0, 16)).toBe('041a3f213a41cf72')
  })

  it.each([
    ['a photograph', '<</Filter /DCTDecode /Length 4>> stream\nabcd\nendstream'],
    ['what is not packed', '<</Length 4>> stream\nabcd\nendstream'],
    ['what cannot be unpacked', '<</Filter /FlateDecode /Length 4>> stream\nabcd\nendstream'],
    ['a length that stands elsewhere', '<</Filter /FlateDecode /Length 12 0 R>> stream\nabcd\nendstream'],
    ['no stream', '<</Type /Page /Contents 4 0 R>>']
  ])('stays as it is: %s', (_, object) => {
    expect(even(object)).toBe(object)
  })
})
