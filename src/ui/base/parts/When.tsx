import { useNow } from "../state/useNow.ts";
import { useFormat } from "../state/useFormat.ts";
import { dayTime } from "../format/time.ts";

export function When({ at }: { readonly at: number }) {
  const now = useNow();
  const { locale } = useFormat();
  return <time dateTime={new Date(at).toISOString()}>{dayTime(at, now, locale)}</time>;
}
