import { create } from "zustand";

export type Toast = {
  readonly id: number;
  readonly text: string;
  readonly tone: "done" | "refused";
  /** Takes back what was just done; left out where it can't be. */
  readonly undo?: (() => void) | undefined;
};

type Fleeting = {
  readonly toasts: readonly Toast[];
  /** Takes the waiting version over and reloads; null when none waits. */
  readonly takeUpdate: (() => void) | null;
  /** True while a screen wants the whole phone for itself, without the bar below. */
  readonly bare: boolean;
  readonly say: (text: string, tone?: Toast["tone"], undo?: Toast["undo"]) => void;
  readonly dismiss: (id: number) => void;
  readonly offerUpdate: (take: () => void) => void;
  readonly setBare: (bare: boolean) => void;
};

let lastToast = 0;

/** What may die with the tab. Nothing a person would miss is kept here. */
export const useFleeting = create<Fleeting>()((set) => ({
  toasts: [],
  takeUpdate: null,
  bare: false,
  say: (text, tone = "done", undo) => {
    lastToast += 1;
    const toast: Toast = { id: lastToast, text, tone, undo };
    // A word of success makes room for the next; a refusal stays until it has been read.
    const stays = (other: Toast): boolean => other.tone === "refused" && other.text !== text;
    set((before) => ({ toasts: [...before.toasts.filter(stays).slice(-2), toast] }));
  },
  dismiss: (id) => set((before) => ({ toasts: before.toasts.filter((toast) => toast.id !== id) })),
  offerUpdate: (take) => set({ takeUpdate: take }),
  setBare: (bare) => set({ bare }),
}));
