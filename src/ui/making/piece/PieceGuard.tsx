import { Component, type ReactNode } from "react";
import { usePieceLog } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { RemakeKey } from "../../shop/settings/RemakeKey.tsx";
import { Timeline } from "../../base/history/Timeline.tsx";

type Props = { readonly id: string; readonly children: ReactNode };

/** Shows a piece's log where its page can't be worked out, so that a line that is in the way can be deleted. */
export class PieceGuard extends Component<Props, { readonly fault: string | null }> {
  override state: { readonly fault: string | null } = { fault: null };

  static getDerivedStateFromError(error: unknown): { readonly fault: string } {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    const { id, children } = this.props;
    return this.state.fault === null ? children : <LogAlone id={id} fault={this.state.fault} />;
  }
}

function LogAlone({ id, fault }: { readonly id: string; readonly fault: string }) {
  const log = usePieceLog(id);
  return (
    <Page title={log?.name ?? "Piece"} back={paths.rack}>
      <Card title="This piece can’t be calculated">
        <p>Its log is kept and shown below. Delete or correct the line at fault, then reload the page.</p>
        <p>What went wrong: {fault}</p>
        <RemakeKey />
      </Card>
      {log !== undefined && log !== null && <Timeline stream={`piece/${id}`} entries={log.entries} />}
    </Page>
  );
}
