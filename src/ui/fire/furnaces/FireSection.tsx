import { useState, type ReactNode } from "react";
import { Link } from "wouter";
import { Button } from "../../base/parts/Button.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./fire.module.css";

export type FireLine = {
  readonly id: string;
  readonly href: string;
  readonly title: string;
  readonly says: ReactNode;
  /** In work stands first; what is through is folded away past a few. */
  readonly state: "under way" | "planned" | "ended";
  /** What its state is called, where that is more than its place in the list. */
  readonly word?: string | undefined;
};

const fewEnded = 3;

/** A list of fires of one kind: those in work, then the newest that are through. */
export function FireSection({
  title,
  lines,
  none,
  plan,
}: {
  readonly title: string;
  readonly lines: readonly FireLine[] | undefined;
  readonly none: string;
  readonly plan: { readonly href: string; readonly label: string };
}) {
  const [all, setAll] = useState(false);
  const of = (state: FireLine["state"]): readonly FireLine[] =>
    lines?.filter((line) => line.state === state) ?? [];
  const ended = of("ended");
  const shown = [...of("under way"), ...of("planned"), ...(all ? ended : ended.slice(0, fewEnded))];
  return (
    <section className={sheet["stack3"]} aria-label={title}>
      <div className={`${sheet["row24"]} ${sheet["middle"]} ${sheet["between"]} ${css["head"]}`}>
        <h2>{title}</h2>
        <LinkButton href={plan.href}>{plan.label}</LinkButton>
      </div>
      {lines !== undefined && lines.length === 0 && <p className={sheet["pale"]}>{none}</p>}
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>
        {shown.map(({ id, href, title: name, says, state, word = state }) => (
          <li key={id}>
            <Link
              href={href}
              className={`${sheet["lines"]} ${sheet["panel"]} ${css["line"]}`}
              data-state={state}
            >
              <span className={`${sheet["row03"]} ${sheet["baseline"]} ${sheet["between"]}`}>
                <strong>{name}</strong>
                <span className={`${sheet["soft"]} ${sheet["firm"]} ${css["state"]}`}>{word}</span>
              </span>
              <small>{says}</small>
            </Link>
          </li>
        ))}
      </ul>
      {!all && ended.length > fewEnded && (
        <Button kind="quiet" onPress={() => setAll(true)}>
          {`Show ${ended.length - fewEnded} more finished`}
        </Button>
      )}
    </section>
  );
}
