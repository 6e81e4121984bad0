import { paths } from "../../base/state/paths.ts";
import { Button } from "../../base/parts/Button.tsx";
import { LinkButton } from "../../base/parts/LinkButton.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { useDemoShop } from "../../shop/demo/useDemoShop.ts";
import { DryPicture, PourPicture, ShellPicture } from "./FirstPictures.tsx";
import css from "./FirstScreen.module.css";

/** An empty app: what it is called, what it does, and the two ways in. */
export function FirstScreen() {
  const demo = useDemoShop();
  return (
    <Page title="Dipbook">
      <div className={css["first"]}>
        <p className={css["says"]}>
          The logbook of your ceramic shells: one tap a coat, when each is dry in your own air, and whether
          the shell will hold the pour.
        </p>
        <ShellPicture />
        <div className={css["ways"]}>
          <LinkButton kind="primary" size="big" href={paths.newPiece}>
            Start a piece
          </LinkButton>
          <Button onPress={demo.load}>Look at a demo shop</Button>
          {demo.fault !== null && <p role="alert">It did not work: {demo.fault}</p>}
        </div>
        <div className={css["pair"]}>
          <DryPicture />
          <PourPicture />
        </div>
        <p className={css["soft"]}>
          It works without a signal, and the log stays on this device. The demo shop can be taken out again.
        </p>
      </div>
    </Page>
  );
}
