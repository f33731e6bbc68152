declare module '@11ty/eleventy' {
  export interface PaginatedData {
    readonly planned: unknown
  }

  /** The part of Eleventy's configuration that is used here. */
  export interface EleventyConfig {
    setUseGitIgnore(use: boolean): void
    setTemplateFormats(formats: readonly string[]): void
    addGlobalData(name: string, data: unknown): void
    addTemplate(path: string, render: (data: PaginatedData) => string, data: Readonly<Record<string, unknown>>): void
  }

  export interface EleventyOptions {
    readonly configPath?: string
    readonly quietMode?: boolean
    readonly config?: (config: EleventyConfig) => void
  }

  export interface EleventyPage {
    readonly outputPath: string
    readonly content: string
  }

  export default class Eleventy {
    constructor(input: string, output: string, options: EleventyOptions)
    readonly logger: { overrideLogger(logger: Readonly<Record<string, (message: string) => void>>): void }
    toJSON(): Promise<EleventyPage[]>
  }
}
