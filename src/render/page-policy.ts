import { createHash } from 'node:crypto'

/** W3C Content Security Policy Level 3, 2.3.1, hash-source. */
export function hashSource(text: string): string {
  return `'sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}'`
}

const HEAD = '<meta charset="utf-8">'

/**
 * A page of the office or on paper under a policy that names its own styles, style attributes and scripts by their hashes, so that
 * nothing else runs and nothing is loaded but what stands beside it. Such pages are opened from a folder as well, where some browsers
 * do not take a file beside the page for its own: `file:` names it, and means nothing on a page that is served.
 */
export function underPolicy(page: string): string {
  const html = String(page)
  return html.replace(HEAD, () => `${HEAD}<meta http-equiv="Content-Security-Policy" content="${policyOf(html)}">`)
}

function policyOf(html: string): string {
  const styles = between(html, '<style>', '</style>').map(hashSource)
  const attributes = between(html, ' style="', '"').map(text => hashSource(plain(text)))
  // Scripts that run; data blocks are of another type and run nothing.
  const scripts = between(html, '<script>', '</script>').map(hashSource)
  if (html.includes('<script src="')) scripts.push("'self'", 'file:')
  return [
    "default-src 'none'",
    `style-src ${[...styles, ...(attributes.length > 0 ? ["'unsafe-hashes'", ...attributes] : [])].join(' ')}`,
    ...(scripts.length > 0 ? [`script-src ${scripts.join(' ')}`] : []),
    "img-src 'self' file: data:",
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'"
  ].join(';')
}

/**
 * What stands between two marks, each text once: a thousand labels have the same few attributes. A binder has a million characters, which an
 * expression takes ten times as long to go through.
 */
function between(html: string, open: string, close: string): string[] {
  const texts = new Set<string>()
  for (let at = html.indexOf(open); at >= 0; at = html.indexOf(open, at)) {
    const end = html.indexOf(close, at + open.length)
    if (end < 0) break
    texts.add(html.slice(at + open.length, end))
    at = end
  }
  return [...texts]
}

/** As the browser reads an attribute. */
function plain(text: string): string {
  return text
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
}

const POLICY = /(<meta http-equiv="?Content-Security-Policy"? content=")([^"]*)/u

/** The page with one more script in its policy, which may listen to the place that it came from. */
export function allowing(html: string, script: string): string {
  return html.replace(POLICY, (_, head: string, policy: string) => {
    const withScript = policy.includes('script-src ')
      ? policy.replace('script-src ', `script-src ${script} `)
      : `${policy};script-src ${script}`
    return head + (withScript.includes('connect-src') ? withScript : `${withScript};connect-src 'self'`)
  })
}
