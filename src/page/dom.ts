/// <reference lib="dom" />

/* The few things that the scripts ask of a document. Whatever is missing is passed over: a page that lost a part still works. */

export function all(selector: string, within: ParentNode = document): HTMLElement[] {
  return Array.from(within.querySelectorAll<HTMLElement>(selector))
}

export function one(selector: string, within: ParentNode = document): HTMLElement | null {
  return within.querySelector<HTMLElement>(selector)
}

export function setText(element: Element | null, text: string): void {
  if (element) element.textContent = text
}

export function make(name: string, text = '', className = ''): HTMLElement {
  const element = document.createElement(name)
  element.textContent = text
  element.className = className
  return element
}

/** A step that fails leaves the page as it was printed. */
export function attempt(step: () => void): void {
  try {
    step()
  } catch {
    return
  }
}
