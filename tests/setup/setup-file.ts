/** A file of setup/, which is plain JavaScript so that it runs before any package is there. The caller says what it takes from it. */
export async function setupFile<T>(name: string): Promise<T> {
  const path = new URL(`../../setup/${name}`, import.meta.url).href
  return (await import(path)) as T
}
