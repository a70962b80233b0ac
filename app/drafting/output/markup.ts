// Text and elements as HTML and SVG write them: nothing a maker typed is ever taken for markup.

type Attributes = Readonly<Record<string, string>>;

/** An element round markup that is finished already; words go through `escaped` first. */
export function element(name: string, attributes: Attributes, ...content: readonly string[]): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  return `<${name}${written.join('')}>${content.join('')}</${name}>`;
}

/** Characters XML 1.0 has no place for are dropped, the five it reserves are written as entities. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}
