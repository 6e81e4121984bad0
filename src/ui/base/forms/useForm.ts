import { useState } from "react";
import { useDraft } from "../state/live.ts";
import type { FieldErrors } from "./fieldSchema.ts";

export type Form<D extends object> = {
  readonly draft: D;
  readonly set: (changes: Partial<D>) => void;
  readonly drop: () => Promise<void>;
  /** Puts everything back as it was before the first change. */
  readonly restart: () => Promise<void>;
  readonly isChanged: boolean;
  /** False until a kept draft has been looked for: where a tap answers a question, the question waits for it. */
  readonly isLooked: boolean;
  readonly errors: FieldErrors;
  readonly tell: (errors: FieldErrors) => void;
};

type Kept<D> = { readonly about: string; readonly draft: D };

/**
 * A half-written form: kept as a draft at every key stroke, its complaints only in memory. `about` names what it
 * speaks of, such as a coat; a draft kept about another one is not taken up.
 */
export function useForm<D extends object>(key: string, initial: D, about = ""): Form<D> {
  const [kept, write, drop, isLooked] = useDraft<Kept<D>>(key, { about, draft: initial });
  const [errors, tell] = useState<FieldErrors>({});
  const draft = kept.about === about ? kept.draft : initial;
  const set = (changes: Partial<D>) => {
    write({ about, draft: { ...draft, ...changes } });
    const touched = Object.keys(changes);
    if (touched.some((name) => errors[name] !== undefined))
      tell(Object.fromEntries(Object.entries(errors).filter(([name]) => !touched.includes(name))));
  };
  const restart = async () => {
    write({ about, draft: initial });
    tell({});
    await drop();
  };
  return {
    draft,
    set,
    drop,
    restart,
    isChanged: JSON.stringify(draft) !== JSON.stringify(initial),
    isLooked,
    errors,
    tell,
  };
}
