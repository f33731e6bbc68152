import { loadSite } from '../../src/load/site.ts'
import type { SiteSources } from '../../src/load/site.ts'
import { replaced, spotsOf } from '../fuzz/spots.ts'

/** What a stranger may paste where words are due. Each calls `hit`, asks for an address, or means something to a program further on. */
export const PAYLOADS: readonly string[] = [
  `<script>hit('script')</script>`,
  `</script><script>hit('closed')</script>`,
  `"><img src=x onerror="hit('image')">`,
  `'><svg/onload=hit('svg')><animate onbegin=hit('animate')>`,
  `</title></style><script>hit('style')</script>`,
  `<!--><script>hit('comment')</script>-->`,
  `<a href="javascript:hit('address')">x</a>`,
  `<iframe srcdoc="<script>parent.hit('frame')</script>"></iframe>`,
  `<style>@import 'http://outside.example/a.css';*{background:url(http://outside.example/b)}</style>`,
  `<link rel=stylesheet href=http://outside.example/c><base href=http://outside.example/>`,
  `<meta http-equiv=refresh content="0;url=http://outside.example/d">`,
  `<object data="data:text/html,<script>hit('object')</script>"></object>`,
  `{{ 7 * 191 }}{% include "/etc/passwd" %}{# c #}\${7 * 191}`,
  `{{ range.constructor("return hit('template')")() }}`,
  `=HYPERLINK("http://outside.example/","x")`,
  `+1+cmd|' /C calc'!A0`,
  `-2+3`,
  `@SUM(1,1)`,
  `a\r\nBEGIN:VEVENT\r\nSUMMARY:forged\r\nEND:VEVENT`,
  `\u202Etxet desrever`,
  `&lt;script&gt;hit('twice')&lt;/script&gt;`,
  `]]><script>hit('data')</script>`,
  `\u2028hit('line')//`,
  `---\non: 2026-05-01\nby: forged\n---`
]

/** Prose of the same kind, in Markdown. */
export const HOSTILE_PROSE = `
## Hostile <script>hit('heading')</script> {{ 7 * 191 }}

<script>hit('prose')</script> <img src=x onerror=hit('prose-image')>

[click](javascript:hit('link')) [click](JaVaScRiPt:hit('link')) [click](data:text/html,<script>hit('link')</script>)
[click](vbscript:hit) [click](&#106;avascript:hit('link')) <javascript:hit('auto')> ![p](http://outside.example/e.png)
[out](http://outside.example/f "title\\" onmouseover=hit('title')")

[ref]: javascript:hit('ref)
[ref] ![svg](data:image/svg+xml,<svg onload=hit('svg')>)

\`\`\`<script>
</code></pre><script>hit('fence')</script>
\`\`\`

| <b onclick=hit(1)>a</b> | {{ constructor }} |
| --- | --- |
| \`</td><script>hit('cell')</script>\` | {% raw %} |
`

export interface HostileSite {
  readonly text: string
  /** How many values of the file carry a payload. */
  readonly carriers: number
}

/** Every value of a site file that takes free text carries a payload; a value that has to be something is left as it is. */
export function hostileSite(sources: SiteSources): HostileSite {
  const source = sources.files.find(one => one.file.endsWith('/site.md'))
  if (!source) throw new Error('No site.md')
  const faultsWith = (text: string): number =>
    loadSite({ ...sources, files: sources.files.map(one => (one === source ? { ...one, text } : one)) }).faults.length
  if (faultsWith(source.text) > 0) throw new Error('The site has faults as it is: one more would not be seen.')
  let [text, carriers] = [source.text, 0]
  for (const spot of spotsOf(source.text)
    .filter(one => one.kind === 'scalar')
    .toSorted((a, b) => b.start - a.start)) {
    const payload = PAYLOADS[carriers % PAYLOADS.length] ?? ''
    const tried = replaced(text, spot, JSON.stringify(`${payload} ${carriers}`))
    if (faultsWith(tried) > 0) continue
    text = tried
    carriers += 1
  }
  return { text: `${text}\n${HOSTILE_PROSE}`, carriers }
}
