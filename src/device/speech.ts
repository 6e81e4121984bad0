/** "speaking": the voice began. "no-answer": it did not begin in time, as with a phone that has no voice at all. */
export type SpeechResult = "speaking" | "no-answer" | "failed" | "missing";

/**
 * Says one sentence, dropping what was still being said. `lang` is a BCP 47 tag such as "en-GB".
 *
 * Never the only signal: voices may be absent, muted or stuck, and iPhones want one sentence after a touch first.
 */
export async function say({
  text,
  lang,
  waitMs = 3000,
}: {
  readonly text: string;
  readonly lang: string;
  readonly waitMs?: number | undefined;
}): Promise<SpeechResult> {
  if (!("speechSynthesis" in globalThis)) return "missing";
  const { speechSynthesis } = globalThis;
  const words = new SpeechSynthesisUtterance(text);
  words.lang = lang;
  return new Promise((resolve) => {
    const timer = setTimeout(() => resolve("no-answer"), waitMs);
    const settle = (result: SpeechResult): void => {
      clearTimeout(timer);
      resolve(result);
    };
    words.addEventListener("start", () => settle("speaking"));
    words.addEventListener("error", () => settle("failed"));
    speechSynthesis.cancel();
    speechSynthesis.speak(words);
  });
}

/** Stops the voice at once. */
export function hush(): void {
  if ("speechSynthesis" in globalThis) speechSynthesis.cancel();
}
