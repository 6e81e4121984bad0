import { Card } from "../../base/parts/Card.tsx";
import { RemakeKey } from "./RemakeKey.tsx";

/** The way out when a list looks wrong: the log is the truth, and every summary can be made from it again. */
export function RebuildCard() {
  return (
    <Card title="Does a list look wrong?">
      <p>Every list is a summary of the log. You can rebuild it at any time; the log is not touched.</p>
      <RemakeKey />
    </Card>
  );
}
