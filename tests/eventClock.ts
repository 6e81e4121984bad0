const stamp = Object.getOwnPropertyDescriptor(Event.prototype, "timeStamp");
if (stamp?.get === undefined) throw new Error("events have no time stamp to be put forward");
let aheadMs = 0;
Object.defineProperty(Event.prototype, "timeStamp", {
  configurable: true,
  get(this: Event): number {
    return (stamp.get?.call(this) as number) + aheadMs;
  },
});

/**
 * So much time passes before the next event, for what goes by the stamps of events: how long a finger stays down, and
 * the time in which a key takes a second press for a slip.
 */
export function passEventMs(ms: number): void {
  aheadMs += ms;
}
