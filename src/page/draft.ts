/// <reference lib="dom" />

/** A half-written slip is kept on the phone, so that a lost signal or a dropped phone costs nothing. Without storage it is not kept. */
export function readDraft(key: string): Readonly<Record<string, string>> {
  try {
    const kept: unknown = JSON.parse(readSetting(key) ?? '{}')
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, string>) : {}
  } catch {
    return {}
  }
}

export function keepDraft(key: string, values: Readonly<Record<string, string>>): void {
  keepSetting(key, JSON.stringify(values))
}

export function dropDraft(key: string): void {
  try {
    localStorage.removeItem(key)
  } catch {
    return
  }
}

export function readSetting(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined
  } catch {
    return undefined
  }
}

export function keepSetting(key: string, value: string): void {
  try {
    localStorage.setItem(key, value)
  } catch {
    return
  }
}
