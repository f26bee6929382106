/** The first administrator of a school or jurisdiction: nobody is there yet who could appoint them. */
import postgres from "postgres";

export type OperatorAppointment =
  | { readonly kind: "APPOINTED"; readonly displayName: string }
  | { readonly kind: "APPOINTED_BEFORE"; readonly displayName: string }
  | { readonly kind: "NO_SUCH_PERSON" }
  | { readonly kind: "NO_SUCH_SCHOOL" };

/**
 * Appoints somebody who has signed in once, and notes it in the audit list in nobody's name. Done again it changes nothing.
 * @param ownerUrl a role that owns the tables; the server's own role may not appoint
 */
export async function appointByOperator(
  ownerUrl: string,
  subject: string,
  to: { readonly schoolName: string } | { readonly jurisdiction: string },
): Promise<OperatorAppointment> {
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    return await sql.begin(async (tx): Promise<OperatorAppointment> => {
      const [person] = await tx<
        { id: string; displayName: string }[]
      >`select id, display_name as "displayName" from person where subject = ${subject}`;
      if (!person) return { kind: "NO_SUCH_PERSON" };
      const [school] =
        "schoolName" in to
          ? await tx<
              { id: string; jurisdiction: string | null }[]
            >`select id, jurisdiction from school where name = ${to.schoolName}`
          : [];
      if ("schoolName" in to && !school) return { kind: "NO_SUCH_SCHOOL" };
      const appointedTo = "jurisdiction" in to ? to.jurisdiction : null;
      const added = await tx`insert into appointment (person_id, school_id, jurisdiction)
        values (${person.id}, ${school?.id ?? null}, ${appointedTo}) on conflict do nothing`;
      if (added.count === 0) return { kind: "APPOINTED_BEFORE", displayName: person.displayName };
      await tx`insert into audit_entry (action, school_id, jurisdiction, details)
        values ('APPOINTED', ${school?.id ?? null}, ${school?.jurisdiction ?? appointedTo}, ${tx.json({ personId: person.id })})`;
      return { kind: "APPOINTED", displayName: person.displayName };
    });
  } finally {
    await sql.end();
  }
}
