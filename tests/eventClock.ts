const stampOf = Object.getOwnPropertyDescriptor(Event.prototype, "timeStamp")?.get;
if (stampOf === undefined) throw new Error("events have no time stamp to be put forward");
let aheadMs = 0;
Object.defineProperty(Event.prototype, "timeStamp", {
  configurable: true,
  get(this: Event): number {
    return (stampOf.call(this) as number) + aheadMs;
  },
});

/**
 * So much time passes before the next event, for what goes by the stamps of events: how long a finger stays down, and
 * the time in which a key takes a second press for a slip.
 */
export function passEventMs(ms: number): void {
  aheadMs += ms;
}
