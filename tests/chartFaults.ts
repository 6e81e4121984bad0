/** What is wrong with a chart as it is drawn: none of it may be so at any width. */

const unit = /°C|°F|%|g\/m³|hours|\bs\b|\bmin|minutes|\d:\d\d|\bh\b|gr\/ft³/i;

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

const meets = (a: Box, b: Box): boolean =>
  Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 1.5 &&
  Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 3;

const comesAfter = (a: Element, b: Element): boolean =>
  (b.compareDocumentPosition(a) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;

/** A plot's faults: title, unit, table, names that run into each other or off the picture, curves past its ends, points under a band. */
export function chartFaults(figure: HTMLElement): readonly string[] {
  const faults: string[] = [];
  const title = figure.querySelector(":scope > p")?.textContent.trim() ?? "";
  if (title.split(" ").length < 2) faults.push("no title that says what to see");
  if (title.endsWith(".")) faults.push(`a title is no sentence with a full stop: ${title}`);
  if (figure.querySelectorAll("table tbody tr").length === 0) faults.push(`${title}: no table with rows`);
  const plots = [...figure.querySelectorAll<SVGSVGElement>("svg")].filter((svg) => svg.querySelector("text"));
  if (plots.length === 0) faults.push(`${title}: no plot`);
  for (const svg of plots) faults.push(...plotFaults(svg).map((fault) => `${title}: ${fault}`));
  return faults;
}

function plotFaults(svg: SVGSVGElement): readonly string[] {
  const faults: string[] = [];
  const { width, height } = svg.viewBox.baseVal;
  const texts = [...svg.querySelectorAll("text")].filter(({ textContent }) => textContent !== "");
  if (!unit.test(texts.map(({ textContent }) => textContent).join(" | "))) faults.push("no unit on an axis");
  const boxOf = (mark: SVGGraphicsElement): Box => {
    const frame = svg.getBoundingClientRect();
    const { x, y, width: w, height: h } = mark.getBoundingClientRect();
    const scale = width / frame.width;
    return { x: (x - frame.x) * scale, y: (y - frame.y) * scale, width: w * scale, height: h * scale };
  };
  const inside = ({ x, y, width: w, height: h }: Box, slack: number): boolean =>
    x >= -slack && y >= -slack && x + w <= width + slack && y + h <= height + slack;
  for (const [i, text] of texts.entries()) {
    const box = boxOf(text);
    if (!inside(box, 2)) faults.push(`“${text.textContent}” leaves the picture`);
    for (const other of texts.slice(i + 1))
      if (meets(box, boxOf(other))) faults.push(`“${text.textContent}” lies on “${other.textContent}”`);
  }
  const axis = texts.filter((text) => /_(end|middle)_/.test(text.getAttribute("class") ?? ""));
  const curves = [...svg.querySelectorAll<SVGPathElement>("path[class*='_line_']")];
  for (const curve of curves) {
    if (!inside(boxOf(curve), 2)) faults.push("a curve leaves its frame");
    // Point by point: the box of a curve that falls holds words which it never touches.
    const length = curve.getTotalLength();
    const at = Array.from({ length: 60 }, (_, i) => curve.getPointAtLength((length * i) / 59));
    for (const text of axis) {
      const box = boxOf(text);
      const isOn = at.some(
        ({ x, y }) =>
          x > box.x + 1 && x < box.x + box.width - 1 && y > box.y + 2 && y < box.y + box.height - 2,
      );
      if (isOn) faults.push(`a curve runs through “${text.textContent}”`);
    }
  }
  const points = [...svg.querySelectorAll<SVGGraphicsElement>("circle, rect[transform]")];
  const covers = [
    ...svg.querySelectorAll<SVGGraphicsElement>(
      "path[class*='and_'], rect[class*='and_'], rect[fill^='url'], text[class*='limitName']",
    ),
  ];
  for (const point of points)
    for (const cover of covers)
      if (comesAfter(cover, point) && meets(boxOf(cover), boxOf(point)))
        faults.push(`a point lies under ${cover.textContent === "" ? "a band" : `“${cover.textContent}”`}`);
  return faults;
}
