/** What somebody reads by a link for the public, and that it is no more than that. */
export function ReadsReleased({ label, endsAt }: { label: string; endsAt: string }) {
  const lastDay = new Date(Date.parse(endsAt) - 1).toLocaleDateString("en-US", {
    dateStyle: "medium",
    timeZone: "UTC",
  });
  return (
    <p className="screen-only">
      Released to the public: {label}. To read until {lastDay}.
    </p>
  );
}
