import { Component, type ReactNode } from "react";
import { useFleeting } from "../state/fleeting.ts";

type Props = {
  /** What stops when this watcher fails, as the start of a sentence: "Alarms for coats". */
  readonly watches: string;
  readonly children: ReactNode;
};

/** Keeps a watcher that fails from taking the screens with it: it stops, and that is said once. */
export class WatcherGuard extends Component<Props, { readonly failed: boolean }> {
  override state: { readonly failed: boolean } = { failed: false };

  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }

  override componentDidCatch(error: unknown): void {
    const why = error instanceof Error ? error.message : String(error);
    useFleeting
      .getState()
      .say(
        `${this.props.watches}: stopped, because something in the log can't be worked out (${why}). Load the page again.`,
        "refused",
      );
  }

  override render(): ReactNode {
    return this.state.failed ? null : this.props.children;
  }
}
