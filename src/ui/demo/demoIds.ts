/** Every stream of the demo begins so, and nothing real does. */
export const demoRoomId = "demo-room";
export const demoPrimeId = "demo-prime";
export const demoBackupId = "demo-backup";
