/** The buffers of an answer's own arrays, to be handed over and not copied; a level deep is where they lie. */
export function buffersIn(answer: unknown): Transferable[] {
  if (typeof answer !== "object" || answer === null || Array.isArray(answer)) return [];
  return Object.values(answer).flatMap((value) =>
    ArrayBuffer.isView(value) && value.buffer instanceof ArrayBuffer ? [value.buffer] : [],
  );
}
