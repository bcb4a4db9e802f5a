-- A vehicle that is driven for the shop. The day it was first used for it may be unknown.
create table vehicle (
    id uuid not null,
    name varchar(80) not null,
    in_service date,
    note varchar(2000) not null,
    version bigint default 0 not null,
    constraint vehicle_pk primary key (id),
    constraint vehicle_name_uk unique (name)
);

-- What the odometer read on the first and the last day of a year, and the miles to a steady place of work. What is not known yet
-- is null.
create table vehicle_year (
    vehicle_id uuid not null,
    tax_year integer not null,
    start_reading numeric(9, 1),
    end_reading numeric(9, 1),
    commuting_miles numeric(9, 1),
    version bigint default 0 not null,
    constraint vehicle_year_pk primary key (vehicle_id, tax_year),
    constraint vehicle_year_vehicle_fk foreign key (vehicle_id) references vehicle (id),
    constraint vehicle_year_year_ck check (tax_year between 1900 and 9999),
    constraint vehicle_year_start_ck check (start_reading >= 0),
    constraint vehicle_year_commuting_ck check (commuting_miles >= 0),
    constraint vehicle_year_readings_ck check (end_reading >= start_reading)
);

-- A way that is driven often, so that a trip over it is one tap.
create table saved_way (
    id uuid not null,
    start_place varchar(120) not null,
    destination varchar(120) not null,
    purpose varchar(200) not null,
    miles_one_way numeric(9, 1) not null,
    version bigint default 0 not null,
    constraint saved_way_pk primary key (id),
    constraint saved_way_miles_ck check (miles_one_way > 0)
);

-- The vehicle of a trip. Null: none was named; where the shop has one vehicle only, it is that.
alter table trip add column vehicle_id uuid;
alter table trip add constraint trip_vehicle_fk foreign key (vehicle_id) references vehicle (id);
