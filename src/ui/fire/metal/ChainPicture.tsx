import type { LinkSeen } from "../../../physics/metal/feedChain.ts";
import { useWidth } from "../../base/charts/useWidth.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { shortSpan } from "./heatWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import plot from "../../base/charts/plot.module.css";
import css from "./ChainPicture.module.css";

const row = 58;
const top = 22;
const mostHalf = 56;
const leastHalf = 5;

/**
 * The way of the feed metal as a channel in section, cup above and casting below, each part as wide as its modulus.
 * Where a part freezes before what it feeds, a bar shuts the channel.
 */
export function ChainPicture({ links }: { readonly links: readonly LinkSeen[] }) {
  const format = useFormat();
  const [box, width] = useWidth<HTMLDivElement>(340);
  const shown = [...links].reverse();
  const most = Math.max(...links.map(({ modulusMm }) => modulusMm));
  const half = (modulusMm: number): number => Math.max(leastHalf, (modulusMm / most) * mostHalf);
  const mid = mostHalf + 10;
  const textX = mid + mostHalf + 18;
  const height = top + shown.length * row + 8;
  return (
    <figure className={sheet["stack2"]}>
      <div ref={box}>
        <svg
          className={plot["svg"]}
          width={width}
          height={height}
          role="img"
          aria-label={`Feed way from ${shown[0]?.name ?? ""} down to ${shown.at(-1)?.name ?? ""}; ${shutWords(links)}`}
        >
          <path
            className={css["way"]}
            d={outline(
              shown.map(({ modulusMm }) => half(modulusMm)),
              mid,
            )}
          />
          {shown.map((link, at) => {
            const y = top + at * row;
            const reach = half(link.modulusMm);
            return (
              <g key={`${at} ${link.name}`}>
                {at > 0 && <path className={plot["rule"]} d={`M${mid - mostHalf - 6} ${y}H${width}`} />}
                {link.verdict === "early" && (
                  <>
                    <path
                      className={css["shut"]}
                      d={`M${mid - reach - 12} ${y + row / 2 - 7}L${mid + reach + 12} ${y + row / 2 + 7}`}
                    />
                    <path
                      className={css["shut"]}
                      d={`M${mid - reach - 12} ${y + row / 2 + 7}L${mid + reach + 12} ${y + row / 2 - 7}`}
                    />
                  </>
                )}
                {(link.verdict === "feeds" || link.verdict === "tight") && (
                  <path className={css["flow"]} d={`M${mid} ${y + row - 16}v18m-5 -6 5 6 5-6`} />
                )}
                <text className={css["name"]} x={textX} y={y + 22}>
                  {clipped(link.name, width - textX)}
                </text>
                <text x={textX} y={y + 38}>
                  M {format.show("mm", link.modulusMm)} · {shortSpan(link.freezeS)}
                </text>
                <text className={css[link.verdict]} x={textX} y={y + 53}>
                  {verdictWords(link)}
                </text>
              </g>
            );
          })}
        </svg>
      </div>
      <figcaption className={sheet["soft"]}>
        Width shows the modulus: volume over cooling surface. Metal feeds from above while each part is wider
        than all below it.
      </figcaption>
      <details>
        <summary>As a table</summary>
        <ChainTable links={links} />
      </details>
    </figure>
  );
}

function ChainTable({ links }: { readonly links: readonly LinkSeen[] }) {
  const format = useFormat();
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Part</th>
          <th scope="col">Modulus</th>
          <th scope="col">Needs</th>
          <th scope="col">Frozen after</th>
          <th scope="col">Result</th>
        </tr>
      </thead>
      <tbody>
        {links.map((link, at) => (
          <tr key={`${at} ${link.name}`}>
            <td>{link.name}</td>
            <td>{format.show("mm", link.modulusMm)}</td>
            <td>{link.needsMm === null ? "–" : format.show("mm", link.needsMm)}</td>
            <td>{shortSpan(link.freezeS)}</td>
            <td>{verdictWords(link)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function verdictWords({ verdict, earlyS, needsMm, modulusMm }: LinkSeen): string {
  switch (verdict) {
    case "first":
      return "the far end";
    case "feeds":
      return "feeds";
    case "tight":
      return `tight: ${Math.round((1 - modulusMm / (needsMm ?? modulusMm)) * 100)}% short`;
    case "early":
      return `shut ${shortSpan(Math.max(1, earlyS))} early`;
  }
}

function shutWords(links: readonly LinkSeen[]): string {
  const shut = links.filter(({ verdict }) => verdict === "early").map(({ name }) => name);
  return shut.length === 0 ? "open all the way" : `shut early at ${shut.join(", ")}`;
}

/** The channel's two walls, stepping from part to part with a short slope between. */
function outline(halves: readonly number[], mid: number): string {
  const slope = 9;
  const down = halves.map((half, at) => {
    const y = top + at * row;
    return [
      [half, at === 0 ? y : y + slope],
      [half, y + row - (at === halves.length - 1 ? 0 : slope)],
    ] as const;
  });
  const right = down.flat().map(([half, y]) => `${mid + half} ${y}`);
  const left = down
    .flat()
    .toReversed()
    .map(([half, y]) => `${mid - half} ${y}`);
  return `M${[...right, ...left].join("L")}Z`;
}

const clipped = (name: string, room: number): string => {
  const most = Math.max(6, Math.floor(room / 8));
  return name.length > most ? `${name.slice(0, most - 1)}…` : name;
};
