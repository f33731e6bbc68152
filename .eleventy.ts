import type { EleventyConfig } from '@11ty/eleventy'

/**
 * Eleventy is driven from src/render/eleventy.ts, which hands it the planned pages, one plain object each. Nothing is decided here.
 * Markdown passes through no template engine: braces in somebody's notes are theirs.
 */
export default function configure(config: EleventyConfig) {
  config.setUseGitIgnore(false)
  config.setTemplateFormats(['11ty.js'])
  return {
    dir: { data: 'none' },
    markdownTemplateEngine: false,
    htmlTemplateEngine: false
  }
}
