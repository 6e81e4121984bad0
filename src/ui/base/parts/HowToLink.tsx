import { CircleQuestionMark } from "lucide-react";
import { Link, useLocation } from "wouter";
import { howToNames, type HowToId } from "../format/howToNames.ts";
import { paths } from "../state/paths.ts";
import sheet from "../styles/sheet.module.css";

/** From a form to the page that shows the work it asks for; that page leads back to the form. */
export function HowToLink({ to }: { readonly to: HowToId }) {
  const [here] = useLocation();
  const name = howToNames[to];
  return (
    <Link href={paths.howTo(to, here)} className={`${sheet["link"]} ${sheet["line2"]}`}>
      <CircleQuestionMark aria-hidden="true" size={20} />
      How to {name.charAt(0).toLowerCase() + name.slice(1)}
    </Link>
  );
}
