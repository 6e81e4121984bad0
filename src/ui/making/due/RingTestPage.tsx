import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useState } from "react";
import { showNotice } from "../../../device/notify.ts";
import { handOver } from "../../../device/share.ts";
import { say as speak } from "../../../device/speech.ts";
import { calendarFile } from "../../../device/calendarFile.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { bell, unlockBells } from "../../base/alarm/bell.ts";
import { prodId } from "../../base/alarm/dueCalendar.ts";
import { RingTest } from "./RingTest.tsx";
import { layerWords } from "../../base/alarm/ringLabel.ts";
import { useNotifyPermission } from "../../base/alarm/useNotifyPermission.ts";
import { useScreenAlarm } from "../../base/alarm/useScreenAlarm.ts";

const noticeInS = 20;
const screenInS = 20;

const noticeWhy: Record<string, string> = {
  missing: "This browser has no notifications here.",
  denied: "Notifications are blocked for this app.",
  "not-asked": "Notifications have not been allowed yet.",
  "no-worker": "The app is not installed offline yet. Load it once more over https, then try again.",
  failed: "The browser blocked it.",
};

/** Tries each way to ring on this very device. What was not heard here is never promised. */
export function RingTestPage() {
  const { clock } = useShop();
  const { locale } = useFormat();
  const [{ calendarSequence }, changeSettings] = useSettings();
  const [permission, ask] = useNotifyPermission();
  const alarm = useScreenAlarm();
  const [notice, setNotice] = useState<string | null>(null);

  const tryScreen = async (): Promise<string> => {
    await alarm.start();
    const state = bell.ring({ inS: screenInS, rounds: 4 });
    setTimeout(() => void speak({ text: "This is the Dipbook alarm", lang: locale }), screenInS * 1000);
    if (state === "missing") return "This browser can’t make a tone.";
    if (state === "locked") return "The browser blocked the sound. Touch the screen and try again.";
    return `Put the phone down and leave the screen on. It rings in ${screenInS} s. Is its mute switch off?`;
  };
  const tryTone = async (): Promise<string> => {
    await unlockBells();
    const state = bell.ring({ inS: 0, rounds: 2 });
    return state === "ready" ? "You should hear it now." : "The browser blocked the sound. Try again.";
  };
  const tryNotice = async (): Promise<string> => {
    if (permission === "not-asked") await ask();
    setTimeout(() => {
      const show = async (): Promise<void> => {
        const shown = await showNotice({
          tag: "ring-test",
          title: "Dipbook",
          body: "This is how Dipbook tells you that a coat is dry.",
          path: paths.ring,
        });
        setNotice(shown.shown ? "Sent to the phone just now." : (noticeWhy[shown.why] ?? null));
      };
      void show();
    }, noticeInS * 1000);
    setNotice(null);
    return `Go to another app now. A notification should come in ${noticeInS} s.`;
  };
  const tryCalendar = async (): Promise<string> => {
    const now = clock();
    const sequence = calendarSequence + 1;
    await changeSettings({ calendarSequence: sequence });
    const event = {
      uid: "ring-test@dipbook",
      sequence,
      startMs: Math.ceil((now + 2 * minuteMs) / minuteMs) * minuteMs,
      durationMin: 5,
      summary: "Dipbook: calendar alarm test",
      description: "Go back to Dipbook and answer whether this rang.",
    };
    const blob = new Blob([calendarFile({ events: [event], now, prodId })], {
      type: "text/calendar;charset=utf-8",
    });
    await handOver({ blob, name: "dipbook-ring-test.ics", by: "download" });
    return "Open the file, add it to your calendar, close the app and wait two to three minutes.";
  };

  return (
    <Page title="Alarms on this device" back={paths.due}>
      <p>
        Test each alarm the way you will use it, then say what happened. The answer is kept for this device.
      </p>
      <RingTest
        layer="tone"
        title="Tone, right now"
        promise="Checks the volume and the mute switch."
        onTry={tryTone}
      >
        Ring now
      </RingTest>
      <RingTest layer="screen" title="This screen, kept on" promise={layerWords.screen} onTry={tryScreen}>
        Ring in {screenInS} s
      </RingTest>
      {alarm.on && (
        <p role="status">
          {alarm.words} <Button onPress={alarm.stop}>Stop</Button>
        </p>
      )}
      <RingTest layer="calendar" title="Your calendar" promise={layerWords.calendar} onTry={tryCalendar}>
        Calendar file for two minutes from now
      </RingTest>
      <RingTest
        layer="notice"
        title="Notification"
        promise={layerWords.notice}
        onTry={tryNotice}
        told={notice}
      >
        Notify me in {noticeInS} s
      </RingTest>
    </Page>
  );
}
