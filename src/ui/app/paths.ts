import type { EntryType } from "../../logbook/entry.ts";

const part = (id: string): string => encodeURIComponent(id);

export const paths = {
  rack: "/",
  dip: "/dip",
  newPiece: "/piece/new",
  piece: (id: string) => `/piece/${part(id)}`,
  editPiece: (id: string) => `/piece/${part(id)}/plan`,
  logFor: (id: string, type: EntryType) => `/piece/${part(id)}/log/${type}`,
  review: (id: string) => `/piece/${part(id)}/review`,
  rooms: "/rooms",
  room: (id: string) => `/rooms/${part(id)}`,
  buckets: "/buckets",
  bucket: (id: string) => `/buckets/${part(id)}`,
  recipes: "/recipes",
  recipe: (id: string) => `/recipes/${part(id)}`,
  due: "/due",
  ring: "/due/test",
  shop: "/shop",
  settings: "/settings",
  archive: "/archive",
  figures: "/figures",
} as const;
