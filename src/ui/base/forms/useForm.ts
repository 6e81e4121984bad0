import { useRef, useState } from "react";
import { useDraft } from "../state/live.ts";
import type { LogResult } from "../state/shop.tsx";
import type { Limits } from "../../../logbook/casting/limits.ts";
import type { FieldErrors } from "./formFields.ts";

export type Form<D extends object> = {
  readonly draft: D;
  readonly set: (changes: Partial<D>) => void;
  readonly drop: () => Promise<void>;
  /** Puts everything back as it was before the first change. */
  readonly restart: () => Promise<void>;
  readonly isChanged: boolean;
  /** Whether a person has set one of these, or anything where none is named: see {@link wasTouched}. */
  readonly isTouched: (...names: readonly (keyof D & string)[]) => boolean;
  /** False until a kept draft has been looked for: where a tap answers a question, the question waits for it. */
  readonly isLooked: boolean;
  readonly errors: FieldErrors;
  readonly tell: (errors: FieldErrors) => void;
  /** Why the log did not take it; null once something is changed or it is sent again. */
  readonly refused: string | null;
  readonly refuse: (why: string) => void;
  /** Writes it once, however often the key is pressed. What was taken drops the draft, and then `done` goes on. */
  readonly send: (write: () => Promise<LogResult>, done?: AfterSave) => Promise<void>;
};

/** What comes after the log has taken it; under `restart` the form stays on the page and begins anew. */
export type AfterSave = (() => void | Promise<void>) | { readonly restart: () => void };

/** Drafts from before `touched` was kept lack it. */
type Kept<D> = { readonly about: string; readonly draft: D; readonly touched?: readonly string[] };

const keysOf = <D extends object>(draft: D) => Object.keys(draft) as (keyof D & string)[];

/**
 * Touched is what a person has set, be it to what stood there before. A figure that a form filled in by itself is nobody's
 * measurement until then: such a form says so on its key ("same as planned"), or starts empty. `touched` are the names
 * that were set; a draft that does not know them counts what differs from the start.
 */
function wasTouched<D extends object>(
  { draft, touched }: { readonly draft: D; readonly touched: readonly string[] | undefined },
  start: D,
  names: readonly (keyof D & string)[],
): boolean {
  const set = (name: keyof D & string): boolean =>
    touched === undefined
      ? JSON.stringify(draft[name]) !== JSON.stringify(start[name])
      : touched.includes(name);
  return (names.length === 0 ? keysOf(draft) : names).some(set);
}

/**
 * What a form speaks of, such as a coat. Where it was once named with less, `was` is that name: a draft kept under it is
 * taken up too, with the values of `given` in it.
 */
type About<D> = string | { readonly is: string; readonly was: string; readonly given: Partial<D> };

/**
 * A half-written form: kept as a draft at every key stroke, its complaints only in memory. A draft
 * kept about something else is not taken up.
 */
export function useForm<D extends object>(key: string, initial: D, asked: About<D> = ""): Form<D> {
  const { is: about, was, given } = typeof asked === "string" ? { is: asked, was: asked, given: {} } : asked;
  const [kept, write, drop, isLooked] = useDraft<Kept<D>>(key, { about, draft: initial });
  const [errors, tell] = useState<FieldErrors>({});
  const [refused, refuse] = useState<string | null>(null);
  const sending = useRef(false);
  // A draft kept from before a field was there has that field's start.
  const draft =
    kept.about === about
      ? { ...initial, ...kept.draft }
      : kept.about === was
        ? { ...initial, ...kept.draft, ...given }
        : initial;
  const isKept = kept.about === about || kept.about === was;
  const touchedNames = isKept ? kept.touched : [];
  const set = (changes: Partial<D>) => {
    const before =
      touchedNames ??
      keysOf(draft).filter((name) => wasTouched({ draft, touched: undefined }, initial, [name]));
    const touched = [...new Set([...before, ...Object.keys(changes)])];
    write({ about, draft: { ...draft, ...changes }, touched });
    refuse(null);
    const mended = Object.keys(changes);
    if (mended.some((name) => errors[name] !== undefined))
      tell(Object.fromEntries(Object.entries(errors).filter(([name]) => !mended.includes(name))));
  };
  const restart = async () => {
    write({ about, draft: initial, touched: [] });
    tell({});
    await drop();
  };
  const send = async (run: () => Promise<LogResult>, done?: AfterSave) => {
    if (sending.current) return;
    sending.current = true;
    refuse(null);
    try {
      const result = await run();
      if (!result.ok) return refuse(result.text);
      if (typeof done === "object") {
        await restart();
        return done.restart();
      }
      await drop();
      await done?.();
    } finally {
      sending.current = false;
    }
  };
  return {
    draft,
    set,
    drop,
    restart,
    isChanged: JSON.stringify(draft) !== JSON.stringify(initial),
    isTouched: (...names) => wasTouched({ draft, touched: touchedNames }, initial, names),
    isLooked,
    errors,
    tell,
    refused,
    refuse,
    send,
  };
}

/** The form of a sum that follows each key stroke: nothing is saved, what lies outside its limits is said at once. */
export function useSumForm<D extends object>(
  key: string,
  initial: D,
  { limits, about }: { readonly limits: Limits<D>; readonly about?: string },
): Form<D> & { readonly limits: Limits<D> } {
  return { ...useForm(key, initial, about), limits };
}
