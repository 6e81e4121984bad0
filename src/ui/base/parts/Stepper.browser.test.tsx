import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { userEvent } from "vitest/browser";
import { useState } from "react";
import { afterEach, expect, test } from "vitest";
import { Stepper } from "./Stepper.tsx";

function Air() {
  const [value, setValue] = useState(21);
  return (
    <Stepper
      label="Temperature"
      value={value}
      onChange={setValue}
      step={0.5}
      min={0}
      max={23}
      show={(v) => `${v} °C`}
    />
  );
}

const value = (): string | null => screen.getByRole("spinbutton", { name: "Temperature" }).textContent;
const more = (): HTMLElement => screen.getByRole("button", { name: "Temperature: more" });

afterEach(cleanup);

test("each tap is one step, to either side", async () => {
  render(<Air />);
  await userEvent.click(more());
  await userEvent.click(more());
  expect(value()).toBe("22 °C");
  await userEvent.click(screen.getByRole("button", { name: "Temperature: less" }));
  expect(value()).toBe("21.5 °C");
});

test("a key held down goes on stepping and stops at the end of the range and on lifting", async () => {
  render(<Air />);
  const held = { pointerId: 3, isPrimary: true, button: 0, pointerType: "touch" };
  fireEvent.pointerDown(more(), held);
  await expect.poll(value, { timeout: 3000 }).toBe("23 °C");
  fireEvent.pointerUp(more(), held);
  expect(value()).toBe("23 °C");
});

test("arrow keys and Home and End set it from a keyboard", async () => {
  render(<Air />);
  screen.getByRole("spinbutton").focus();
  await userEvent.keyboard("{ArrowDown}");
  expect(value()).toBe("20.5 °C");
  await userEvent.keyboard("{End}");
  expect(value()).toBe("23 °C");
  await userEvent.keyboard("{Home}");
  expect(value()).toBe("0 °C");
});
