/** An element with its properties and what it holds; what is undefined is left out. Text is text, never markup. */
export function element(tag, properties = {}, ...children) {
  const made = Object.assign(document.createElement(tag), properties);
  made.append(...children.filter((child) => child !== undefined));
  return made;
}
