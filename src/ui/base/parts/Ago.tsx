import { useNow } from "../state/useNow.ts";
import { ago } from "../format/time.ts";

export function Ago({ at }: { readonly at: number }) {
  const now = useNow();
  return <time dateTime={new Date(at).toISOString()}>{ago(at, now)}</time>;
}
