import { paths } from "../../base/state/paths.ts";
import { Empty } from "../../base/parts/Empty.tsx";
import { Page } from "../../base/parts/Page.tsx";

export function NoRoom() {
  return (
    <Page title="No such room" back={paths.rooms}>
      <Empty title="This room does not exist">
        <p>It may be in another shop’s log.</p>
      </Empty>
    </Page>
  );
}
