// Elements from text, and never from markup: names and titles come from strangers.

/** An element. Attributes are set, `on` holds listeners, children are elements or text. */
export function el(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name === 'on') for (const [event, listener] of Object.entries(value)) element.addEventListener(event, listener);
    else if (value === true) element.setAttribute(name, '');
    else if (value !== undefined && value !== false && value !== null) element.setAttribute(name, value);
  }
  element.append(...children.flat(Infinity).filter(child => child !== undefined && child !== null && child !== false));
  return element;
}

export const byId = id => document.getElementById(id);
