/** What a reader of a page sees as text: tags, styles, scripts and comments taken away, the common entities put back. */
export function textOf(html: string): string {
  return html
    .replace(/<(style|script)[^>]*>[\s\S]*?<\/\1>/gu, ' ')
    .replace(/<!--[\s\S]*?-->/gu, ' ')
    .replace(/<[^>]*>/gu, ' ')
    .replace(/&#(\d+);/gu, (_, code: string) => String.fromCodePoint(Number(code)))
    .replace(/&quot;/gu, '"')
    .replace(/&lt;/gu, '<')
    .replace(/&gt;/gu, '>')
    .replace(/&amp;/gu, '&')
}

export function idsOf(html: string): string[] {
  return [...html.matchAll(/ id="([^"]*)"/gu)].map(([, id]) => id ?? '')
}
