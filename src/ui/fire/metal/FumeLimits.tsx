import type { Contents } from "../../../physics/metal/scrap.ts";
import { limitsOfMetal } from "../../../trade/metals/metalAir.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";

/** Limits on what is breathed over a metal, folded; nothing where none is known. */
export function FumeLimits({ contents }: { readonly contents: Contents }) {
  const format = useFormat();
  const limits = limitsOfMetal(contents);
  if (limits.length === 0) return null;
  return (
    <details>
      <summary>Exposure limits</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">In the air</th>
            <th scope="col">Limit</th>
            <th scope="col">Source</th>
          </tr>
        </thead>
        <tbody>
          {limits.map(({ label, unit, limit, kind }) => (
            <tr key={label}>
              <td>{label}</td>
              <td>
                {format.number(limit.value, 4)} {unit},{" "}
                {kind === "ceiling" ? "never more" : "over eight hours"}
              </td>
              <td>
                {limit.source}
                {limit.note !== undefined && `. ${limit.note}`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={sheet["soft"]}>Below a limit is not the same as safe. You can’t judge it by smell.</p>
    </details>
  );
}
