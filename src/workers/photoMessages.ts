export type PhotoJob = { readonly id: number; readonly file: Blob };

/** "unreadable": not a picture, or of a kind this browser can't open. "missing": it can't draw outside the page. */
export type PhotoFailure = "unreadable" | "missing" | "failed";

export type ShrunkPhoto = {
  /** A JPEG without the camera's notes: they may hold the place it was taken at. */
  readonly photo: Blob;
  readonly widthPx: number;
  readonly heightPx: number;
};

export type PhotoReply =
  | ({ readonly id: number; readonly ok: true } & ShrunkPhoto)
  | { readonly id: number; readonly ok: false; readonly why: PhotoFailure };
