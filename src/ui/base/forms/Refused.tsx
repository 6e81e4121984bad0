import type { Form } from "./useForm.ts";
import css from "./Refused.module.css";

/** Why a form was not taken: marked fields, where there are some, and what the log said. */
export function Refused({
  form: { errors, refused },
  notYet,
  plain = false,
}: {
  readonly form: Pick<Form<object>, "errors" | "refused">;
  /** How a long form says that fields above are marked: "Not saved yet". */
  readonly notYet?: string;
  /** Without a frame, within a card. */
  readonly plain?: boolean;
}) {
  const marked = Object.values(errors).filter((sentence) => sentence !== undefined).length;
  const name = css[plain ? "plain" : "refused"];
  return (
    <>
      {notYet !== undefined && marked > 0 && (
        <p role="alert" className={name}>
          {notYet}: see the marked {marked === 1 ? "field" : "fields"}.
        </p>
      )}
      {refused !== null && (
        <p role="alert" className={name}>
          {refused}
        </p>
      )}
    </>
  );
}
