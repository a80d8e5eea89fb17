/** Elements, made and found. */
type Child = Node | string;

export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Readonly<Record<string, string>>,
  ...children: readonly Child[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
}

export function found<Kind extends HTMLElement>(id: string): Kind {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no element ${id}`);
  return element as Kind;
}

export function button(text: string, click: () => void, attributes: Readonly<Record<string, string>> = {}) {
  const element = make('button', { type: 'button', ...attributes }, text);
  element.addEventListener('click', click);
  return element;
}
