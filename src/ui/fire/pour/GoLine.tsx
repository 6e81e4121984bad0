import type { GoStanding } from "../../../rules/pourGo.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { goText } from "./goWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

const asks: readonly GoStanding["state"][] = ["none", "open", "lapsed", "no-go", "not-open"];

const looks = {
  lapsed: styles["lapsed"],
  stop: `${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`,
  order: sheet["strong"],
} as const;

/** Where the go stands, and the way to the sheet while there is none. */
export function GoLine({
  go,
  now,
  isLarge,
}: {
  readonly go: GoStanding;
  readonly now: number;
  readonly isLarge: boolean;
}) {
  const format = useFormat();
  const { state, known } = go;
  const kind =
    state === "lapsed" && isLarge ? "lapsed" : state === "lapsed" || state === "no-go" ? "stop" : "order";
  return (
    <>
      <p className={looks[kind]} role={state === "lapsed" ? "alert" : "status"}>
        {goText(go, { format, now })}
      </p>
      {asks.includes(state) && (
        <div className={styles["keys"]}>
          <LinkButton
            kind={state === "lapsed" ? "primary" : "secondary"}
            href={paths.pourSheet(known.pour.id)}
          >
            Go through the pour sheet
          </LinkButton>
        </div>
      )}
    </>
  );
}
