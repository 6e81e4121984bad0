import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { userEvent } from "vitest/browser";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { passEventMs } from "../../../../tests/eventClock.ts";
import "../styles/base.css";
import "../styles/tokens.css";
import { usePress, type PressOptions } from "./usePress.ts";

const pressed = vi.fn<() => unknown>();

function Key(options: PressOptions) {
  return (
    <button type="button" {...usePress(pressed, options)}>
      Coat done
    </button>
  );
}

const key = (): HTMLElement => screen.getByRole("button", { name: "Coat done" });

type Touch = {
  pointerId?: number;
  isPrimary?: boolean;
  clientX?: number;
  clientY?: number;
  pointerType?: string;
};
const touch = (more: Touch = {}) => ({
  pointerId: 7,
  isPrimary: true,
  button: 0,
  pointerType: "touch",
  clientX: 50,
  clientY: 50,
  ...more,
});

/** A finger that comes down, stays a while and lifts. */
function finger(ms: number, lift: Touch = {}): void {
  fireEvent.pointerDown(key(), touch());
  passEventMs(ms);
  fireEvent.pointerUp(key(), touch(lift));
}

beforeEach(() => {
  pressed.mockReset();
});
afterEach(cleanup);

describe("a finger", () => {
  test("acts when it lifts, not when it comes down", () => {
    render(<Key />);
    fireEvent.pointerDown(key(), touch());
    passEventMs(60);
    expect(pressed).not.toHaveBeenCalled();
    fireEvent.pointerUp(key(), touch());
    expect(pressed).toHaveBeenCalledTimes(1);
  });

  test("is seen by the key: while it is down, when it is taken, and when it was too short to count", () => {
    render(<Key />);
    fireEvent.pointerDown(key(), touch());
    expect(key().dataset["touch"]).toBe("down");
    passEventMs(60);
    fireEvent.pointerUp(key(), touch());
    expect(key().dataset["touch"]).toBe("taken");
    finger(10);
    expect(pressed).toHaveBeenCalledTimes(1);
    expect(key().dataset["touch"]).toBe("dropped");
    expect(getComputedStyle(key()).outlineStyle).toBe("dashed");
  });

  test("that lifts beside the key is dropped, and the next one counts", () => {
    render(<Key />);
    fireEvent.pointerDown(key(), touch());
    passEventMs(60);
    fireEvent.pointerUp(document.body, touch());
    expect(key().dataset["touch"]).toBe("dropped");
    fireEvent.pointerDown(key(), touch({ pointerId: 8 }));
    passEventMs(60);
    fireEvent.pointerUp(key(), touch({ pointerId: 8 }));
    expect(pressed).toHaveBeenCalledTimes(1);
  });

  test("that trembles still counts, one that slid away does not", () => {
    render(<Key />);
    finger(60, { clientX: 90 });
    expect(pressed).toHaveBeenCalledTimes(1);
    finger(60, { clientX: 99 });
    expect(pressed).toHaveBeenCalledTimes(1);
  });

  test("shorter than any finger is a drop of water", () => {
    render(<Key />);
    finger(0);
    expect(pressed).not.toHaveBeenCalled();
  });

  test("is not heard when a second one came down anywhere on the glass", () => {
    render(<Key />);
    fireEvent.pointerDown(key(), touch());
    fireEvent.pointerDown(document.body, touch({ pointerId: 8, isPrimary: false }));
    passEventMs(60);
    fireEvent.pointerUp(document.body, touch({ pointerId: 8, isPrimary: false }));
    fireEvent.pointerUp(key(), touch());
    expect(pressed).not.toHaveBeenCalled();
    finger(60);
    expect(pressed).toHaveBeenCalledTimes(1);
  });

  test("that starts to scroll is no press", () => {
    render(<Key />);
    fireEvent.pointerDown(key(), touch());
    fireEvent.pointerCancel(key(), touch());
    passEventMs(60);
    fireEvent.pointerUp(key(), touch());
    expect(pressed).not.toHaveBeenCalled();
  });

  test("twice within the time of a slip counts once", () => {
    render(<Key debounceMs={300} />);
    finger(60);
    finger(60);
    expect(pressed).toHaveBeenCalledTimes(1);
    passEventMs(320);
    finger(60);
    expect(pressed).toHaveBeenCalledTimes(2);
  });
});

test("a mouse click counts once, for its pointer and its click together", async () => {
  render(<Key />);
  await userEvent.click(key());
  expect(pressed).toHaveBeenCalledTimes(1);
});

test("Space and Enter press it, once each", async () => {
  render(<Key />);
  key().focus();
  await userEvent.keyboard("{Enter}");
  expect(pressed).toHaveBeenCalledTimes(1);
  await userEvent.keyboard(" ");
  expect(pressed).toHaveBeenCalledTimes(2);
});

test("a key that is off takes no press of any kind", async () => {
  render(<Key disabled />);
  finger(60);
  await userEvent.click(key());
  key().focus();
  await userEvent.keyboard("{Enter}");
  expect(pressed).not.toHaveBeenCalled();
});

test("while a press is being written a second one is not taken", async () => {
  let finish = (): void => undefined;
  const written = new Promise<void>((resolve) => (finish = resolve));
  pressed.mockReturnValueOnce(written);
  render(<Key />);
  finger(60);
  finger(60);
  expect(pressed).toHaveBeenCalledTimes(1);
  finish();
  await written;
  finger(60);
  expect(pressed).toHaveBeenCalledTimes(2);
});

test("what appears under the finger by the press is not pressed by the click that follows", async () => {
  const ghost = vi.fn<() => void>();
  const stranger = document.createElement("button");
  stranger.addEventListener("click", ghost);
  document.body.append(stranger);
  render(<Key />);
  finger(60);
  expect(pressed).toHaveBeenCalledTimes(1);
  stranger.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true, detail: 1 }));
  expect(ghost).not.toHaveBeenCalled();
  await userEvent.click(stranger);
  expect(ghost).toHaveBeenCalledTimes(1);
  stranger.remove();
});
