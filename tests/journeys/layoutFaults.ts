/**
 * What is wrong with the boxes of the screen as it stands, one line each; run inside the page. Pixels are not compared:
 * a text in another place is no fault, one that is cut, covered or pushed out is, and so is a target too small to hit.
 */
export function layoutFaults(): readonly string[] {
  const leastTargetPx = 44;
  /** Boxes end between pixels, and letters overhang their own a little. */
  const slackPx = 1.5;
  const faults = new Set<string>();
  // Cards out of view are not laid out until they come in: here all of them are looked at.
  const laidOut = document.createElement("style");
  laidOut.textContent = "* { content-visibility: visible !important; }";
  document.head.append(laidOut);
  const wide = document.documentElement.clientWidth;

  const nameOf = (element: Element): string => {
    const said = (element.getAttribute("aria-label") ?? element.textContent ?? "")
      .trim()
      .replaceAll(/\s+/g, " ");
    return `${element.tagName.toLowerCase()} “${said.slice(0, 50)}”`;
  };
  // Asked of every box around every text: what does not change while it is looked at is asked once.
  const styles = new Map<Element, CSSStyleDeclaration>();
  const styleOf = (element: Element): CSSStyleDeclaration => {
    const known = styles.get(element) ?? getComputedStyle(element);
    styles.set(element, known);
    return known;
  };
  /** Taken out of sight for the eye alone, as the head of a table that stands as rows on a phone. */
  const clipped = new Map<Element, boolean>();
  const isClipped = (element: Element): boolean => {
    const before = clipped.get(element);
    if (before !== undefined) return before;
    const { parentElement } = element;
    const answer =
      styleOf(element).clipPath === "inset(50%)" || (parentElement !== null && isClipped(parentElement));
    clipped.set(element, answer);
    return answer;
  };
  const isSeen = (element: Element): boolean =>
    element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
    element.closest("[inert]") === null &&
    !isClipped(element);
  /** Only their upper or lower edge may be out of sight: they are scrolled to. */
  const scrollsDown = (style: CSSStyleDeclaration): boolean => /auto|scroll/.test(style.overflowY);

  type Said = { readonly text: string; readonly holder: Element; readonly rects: readonly DOMRect[] };
  const said: Said[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const holder = node.parentElement;
    const text = node.textContent?.trim() ?? "";
    if (holder === null || text === "" || holder.closest("script, style, option, noscript") !== null)
      continue;
    if (!isSeen(holder)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const rects = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
    if (rects.length > 0) said.push({ text, holder, rects });
  }

  const boxes = "section, li, td, th, button, a, label, fieldset, dd, dt, summary, figure, form, header, nav";
  type Around = {
    readonly tag: string;
    readonly isNamed: boolean;
    readonly clipsX: boolean;
    readonly clipsY: boolean;
    readonly edges: DOMRect;
  };
  const around = new Map<Element, readonly Around[]>();
  const boxesAround = (element: Element | null): readonly Around[] => {
    if (element === null || element === document.body) return [];
    const before = around.get(element);
    if (before !== undefined) return before;
    const outer = boxesAround(element.parentElement);
    const style = styleOf(element);
    const isNamed = element.matches(boxes);
    const clipsX = style.overflowX !== "visible";
    // At the bucket a line under a key ends in dots after its second row: longer ones would push the key away.
    const endsInDots = Number(style.webkitLineClamp) >= 2;
    const clipsY = style.overflowY !== "visible" && !scrollsDown(style) && !endsInDots;
    const isBox = !/^(inline|contents)$/.test(style.display) && (isNamed || clipsX || clipsY);
    const own = { tag: element.tagName.toLowerCase(), isNamed, clipsX, clipsY };
    const all = isBox ? [{ ...own, edges: element.getBoundingClientRect() }, ...outer] : outer;
    around.set(element, all);
    return all;
  };
  for (const { text, holder, rects } of said) {
    const at = `“${text.slice(0, 50)}”`;
    const isDrawn = holder.closest("svg") !== null;
    // On the narrowest phone a table may be pushed sideways in a box of its own.
    const table = wide < 360 ? holder.closest("table") : null;
    if (table !== null && table.parentElement !== null && styleOf(table.parentElement).overflowX === "auto")
      continue;
    for (const { left, right } of rects)
      if (left < -slackPx || right > wide + slackPx)
        faults.add(`past the screen's edge: ${at}, ${Math.round(left)} to ${Math.round(right)} of ${wide}`);
    for (const { tag, isNamed, clipsX, clipsY, edges } of boxesAround(
      isDrawn ? holder.closest("svg") : holder,
    ))
      for (const rect of rects) {
        const isOut = rect.left < edges.left - slackPx || rect.right > edges.right + slackPx;
        if (isOut && (clipsX || isNamed)) faults.add(`out of its ${tag}: ${at}`);
        // Part of a line: a font's line box is taller than what is drawn of it.
        const lost = Math.max(edges.top - rect.top, rect.bottom - edges.bottom);
        if (clipsY && lost > rect.height / 3) faults.add(`cut off in its ${tag}: ${at}`);
      }
  }

  for (const select of document.querySelectorAll("select")) {
    if (!isSeen(select)) continue;
    const style = styleOf(select);
    const brush = document.createElement("canvas").getContext("2d");
    if (brush === null) continue;
    brush.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const text = select.selectedOptions[0]?.text ?? "";
    if (style.textOverflow === "ellipsis") continue;
    const room = select.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
    if (brush.measureText(text).width > room + slackPx)
      faults.add(`cut by its arrow: “${text.slice(0, 60)}”`);
  }

  // What stays in its place while the page is scrolled lies over it by intent.
  const fixed = new Map<Element, boolean>();
  const isFixed = (element: Element): boolean => {
    const before = fixed.get(element);
    if (before !== undefined) return before;
    const { parentElement } = element;
    const answer =
      /fixed|sticky/.test(styleOf(element).position) || (parentElement !== null && isFixed(parentElement));
    fixed.set(element, answer);
    return answer;
  };
  type Box = { readonly rect: DOMRect; readonly of: Said };
  const placed: Box[] = said
    .filter(({ holder }) => !isFixed(holder) && holder.closest("svg, canvas") === null)
    .flatMap((of) => of.rects.map((rect) => ({ rect, of })))
    .toSorted((a, b) => a.rect.top - b.rect.top);
  placed.forEach(({ rect, of }, place) => {
    for (let next = place + 1; next < placed.length; next += 1) {
      const other = placed[next];
      if (other === undefined || other.rect.top >= rect.bottom) break;
      if (other.of === of) continue;
      const across = Math.min(rect.right, other.rect.right) - Math.max(rect.left, other.rect.left);
      const down = Math.min(rect.bottom, other.rect.bottom) - Math.max(rect.top, other.rect.top);
      // Lines set close touch each other's box by a few pixels.
      if (across > 2 && down > Math.min(rect.height, other.rect.height) / 2)
        faults.add(`one over the other: “${of.text.slice(0, 40)}” and “${other.of.text.slice(0, 40)}”`);
    }
  });

  const targets =
    "a[href], button, select, summary, textarea, input:not([type=hidden]), [role=button], [role=slider]";
  for (const target of document.querySelectorAll(targets)) {
    const labelled = target instanceof HTMLInputElement && /radio|checkbox|file/.test(target.type);
    const hit = labelled ? (target.closest("label") ?? target.labels?.[0] ?? target) : target;
    if (!isSeen(hit) || styleOf(hit).pointerEvents === "none") continue;
    const { width, height } = hit.getBoundingClientRect();
    const own = target.getBoundingClientRect();
    const isLarge = [own, { width, height }].some(
      (box) => box.width >= leastTargetPx - 0.5 && box.height >= leastTargetPx - 0.5,
    );
    // A link in the middle of a sentence is as high as its line.
    const inSentence =
      target.tagName === "A" &&
      styleOf(target).display === "inline" &&
      (target.parentElement?.textContent?.trim().length ?? 0) > (target.textContent?.trim().length ?? 0) + 3;
    if (!inSentence && !isLarge)
      faults.add(`too small to hit: ${nameOf(target)}, ${Math.round(width)} by ${Math.round(height)} px`);
  }

  const nav = document.querySelector("nav[aria-label=Main]")?.getBoundingClientRect();
  if (nav !== undefined && nav.width > 0) {
    const isRail = nav.height > nav.width;
    const isInPlace = isRail
      ? nav.left <= 0 && nav.top <= 0
      : Math.abs(nav.bottom - innerHeight) < 2 && nav.right <= wide + slackPx;
    if (!isInPlace) faults.add(`the main places are not at the edge: ${JSON.stringify(nav)}`);
  }
  const title = document.querySelector("h1")?.getBoundingClientRect();
  if (title !== undefined && scrollY === 0 && title.top > 160)
    faults.add(`the title begins at ${title.top} px`);
  laidOut.remove();
  return [...faults];
}
