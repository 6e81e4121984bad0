import { Component, type ReactNode } from "react";
import { Button } from "../base/parts/Button.tsx";
import { Empty } from "../base/parts/Empty.tsx";

/** Keeps the frame standing when one screen fails: the log is in the store and not touched by it. */
export class ScreenGuard extends Component<
  { readonly children: ReactNode },
  { readonly fault: string | null }
> {
  override state: { readonly fault: string | null } = { fault: null };

  static getDerivedStateFromError(error: unknown): { readonly fault: string } {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.fault === null) return this.props.children;
    return (
      <div role="alert" style={{ padding: "var(--gap-4)" }}>
        <Empty title="This screen could not be shown">
          <p>What you have logged is kept. What went wrong: {this.state.fault}</p>
          <Button kind="primary" onPress={() => location.reload()}>
            Load it again
          </Button>
        </Empty>
      </div>
    );
  }
}
