import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const page = readFileSync(new URL('../../docs/hosting.md', import.meta.url), 'utf8')

describe('the page on hosting', () => {
  it('says what is uploaded and what never, and names the one setting with its file', () => {
    for (const line of [/`public\/` \| yes/u, /`office\/` \| never/u, /`print\/` \| never/u, /`data\/` \| never/u])
      expect(page).toMatch(line)
    expect(page).toContain('public-address')
    expect(page).toContain('sites/_shared/company.md')
  })

  it('names no address but examples', () => {
    const hosts = [...page.matchAll(/https?:\/\/([^/\s`)]+)/giu)].map(match => (match[1] ?? '').toLowerCase())
    expect([...new Set(hosts)].sort()).toEqual(['127.0.0.1:…', 'example.org', 'tags.example.org', 'your.address'])
  })
})
