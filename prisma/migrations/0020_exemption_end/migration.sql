-- An exemption ends early: its last day moves, and what the clinician wrote stays where it is. Either home may end it.
create policy exemption_change on exemption for update using (child_id in (select app_writable_child_ids()))
  with check (child_id in (select app_writable_child_ids()));
grant update (until_date) on exemption to noonpail_app;
