-- The entries a phone delivered: each is carried out once, however often it arrives. A row is written in the same
-- transaction as what the entry recorded, and kept for ever: the key of an entry is the id of its document.
create table delivery (
    -- The account that sent it, by name; a key means something within one account.
    who varchar(60) not null,
    entry_key uuid not null,
    -- SHA-256 of what was sent, in hexadecimal.
    fingerprint varchar(64) not null,
    -- The receipt: where the entry is seen, and what was said of it.
    href varchar(400) not null,
    words varchar(2000) not null,
    -- By the phone's clock, which may be wrong; null where the phone did not say.
    captured_at timestamp with time zone,
    received_at timestamp with time zone not null,
    constraint delivery_pk primary key (who, entry_key)
);
