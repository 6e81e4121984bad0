import { createI18n, transform, type Translations } from "@nanostores/i18n";
import { atom } from "nanostores";

/** The language of the texts. English lies in the program; another would be fetched part by part when it is chosen. */
const language = atom<"en">("en");
const i18n = createI18n(language, { baseLocale: "en", get: () => Promise.resolve({}) });

/** The placeholders of a text: `"{count} coats of {kind}"` has `count` and `kind`. */
type Names<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Names<Rest>
  : never;
type Values<Name extends string = string> = Readonly<Record<Name, string | number>>;

/** Made once a language: making one takes far longer than using it. */
function keptBy<T>(make: (locale: string) => T): (locale: string) => T {
  const kept = new Map<string, T>();
  return (locale) => {
    const one = kept.get(locale) ?? make(locale);
    kept.set(locale, one);
    return one;
  };
}
const numbers = keptBy((locale) => new Intl.NumberFormat(locale));
const pluralRules = keptBy((locale) => new Intl.PluralRules(locale));

// The library's own filling reads "$&" in a maker's note as a command, and fills what a note itself has in braces.
const fill = (locale: string, text: string, values: Values): string =>
  text.replaceAll(/\{(\w+)\}/g, (whole: string, name: string) => {
    const value = values[name] ?? whole;
    return typeof value === "number" ? numbers(locale).format(value) : value;
  });

/** A text with placeholders; it does not compile until each is given. */
export const params: <const Text extends string>(text: Text) => (values: Values<Names<Text>>) => string =
  transform((locale: string, text: string, values: Values) => fill(locale, text, values));

type Forms = Readonly<Partial<Record<Intl.LDMLPluralRule, string>>> & { readonly other: string };

/** A text that goes by a number, `{count}` in it: "1 coat", "3 coats". */
export const plural: (forms: Forms) => (count: number) => string = transform(
  (locale: string, forms: Forms, count: number) =>
    fill(locale, forms[pluralRules(locale).select(count)] ?? forms.other, { count }),
);

/**
 * One part of the catalogue: texts by key, which follow the language. Keys and placeholders are types, so that a text
 * asked for and missing does not compile. `name` is how a translation names the part, and what it would be split by.
 */
export function catalogue<const Texts extends Translations>(name: string, texts: Texts): Readonly<Texts> {
  const part = i18n(name, texts);
  // Held on to, so that each reading of a text is a look-up and not a subscription of its own.
  part.listen(() => undefined);
  const live = {};
  for (const key of Object.keys(texts))
    Object.defineProperty(live, key, { enumerable: true, get: () => part.get()[key] });
  return live as Readonly<Texts>;
}
