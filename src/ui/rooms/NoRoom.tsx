import { paths } from "../app/paths.ts";
import { Empty } from "../parts/Empty.tsx";
import { Page } from "../parts/Page.tsx";

export function NoRoom() {
  return (
    <Page title="No such room" back={paths.rooms}>
      <Empty title="There is no such room">
        <p>It may be in another shop’s log.</p>
      </Empty>
    </Page>
  );
}
