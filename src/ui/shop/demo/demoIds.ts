/** Every stream and every thing of the demo begins so, and nothing real does. */
export const demoRoomId = "demo-room";
export const demoShedId = "demo-shed";
export const demoPrimeId = "demo-prime";
export const demoBackupId = "demo-backup";
export const demoOldBucketId = "demo-old-backup";
export const demoCupId = "demo-cup";
export const demoKilnId = "demo-kiln";
export const demoFurnaceId = "demo-furnace";
export const demoPhotoId = "demo-photo-gnomon";
export const demoAlloyId = "demo-studio-bronze";
