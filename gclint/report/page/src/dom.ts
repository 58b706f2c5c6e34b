// Elements without markup: text stays text, whatever a program's comments or names hold.

type Child = Node | string | null;
const SVG = "http://www.w3.org/2000/svg";

export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K, attributes: Record<string, string> = {}, ...children: Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children.filter((child): child is Node | string => child !== null));
  return element;
}

export function draw(tag: string, attributes: Record<string, string | number>, ...children: Child[]): SVGElement {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  element.append(...children.filter((child): child is Node | string => child !== null));
  return element;
}

export function figure(value: number, digits = 3): string { return String(Number(value.toPrecision(digits))); }
